#include "app/bench/look/wording.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace pithward::bench {

namespace {

struct Wording {
    Q_DECLARE_TR_FUNCTIONS(Wording)
};

QString number(double value, int decimals) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(value, 'f', decimals);
}

QString width_of(const Ring& ring, bool with_sd) {
    if (ring.absent) {
        return Wording::tr("locally absent");
    }
    if (!ring.width) {
        return Wording::tr("not measured");
    }
    const QString width = in_words(*ring.width);
    return with_sd && ring.sd > Millimetres() ? Wording::tr("%1 ± %2").arg(width, in_words(ring.sd)) : width;
}

} // namespace

QString name_of(WoodType wood) {
    switch (wood) {
    case WoodType::Conifer:
        return Wording::tr("Conifer");
    case WoodType::RingPorous:
        return Wording::tr("Ring-porous");
    case WoodType::DiffusePorous:
        return Wording::tr("Diffuse-porous");
    }
    return {};
}

QString name_of(OuterWood outer) {
    switch (outer) {
    case OuterWood::Complete:
        return Wording::tr("Complete ring");
    case OuterWood::Unfinished:
        return Wording::tr("Unfinished ring");
    case OuterWood::Lost:
        return Wording::tr("Outer wood lost");
    case OuterWood::Unknown:
        return Wording::tr("Not known");
    }
    return {};
}

QString name_of(FindingKind kind) {
    switch (kind) {
    case FindingKind::PossiblyFalse:
        return Wording::tr("Possibly a false ring");
    case FindingKind::PossiblyOverlooked:
        return Wording::tr("Possibly overlooked");
    case FindingKind::Doubtful:
        return Wording::tr("Doubtful boundary");
    case FindingKind::OuterWood:
        return Wording::tr("Wood under the bark");
    case FindingKind::BarkEnd:
        return Wording::tr("Bark end");
    case FindingKind::LostWood:
        return Wording::tr("Lost wood");
    case FindingKind::Wedging:
        return Wording::tr("Wedging ring");
    case FindingKind::Scale:
        return Wording::tr("Scale");
    case FindingKind::Pith:
        return Wording::tr("Pith");
    case FindingKind::PastPith:
        return Wording::tr("Past the pith?");
    case FindingKind::Wood:
        return Wording::tr("Kind of wood");
    case FindingKind::FieldSheet:
        return Wording::tr("Field sheet");
    case FindingKind::Slip:
        return Wording::tr("Slip against the site");
    }
    return {};
}

QString name_of(Calibration::Source source) {
    switch (source) {
    case Calibration::Source::FileTag:
        return Wording::tr("the file's tag");
    case Calibration::Source::Given:
        return Wording::tr("your word");
    case Calibration::Source::Ruler:
        return Wording::tr("the ruler");
    }
    return {};
}

QString in_words(const Calibration& calibration) {
    const QString x = number(calibration.dpi_x(), 0);
    const QString y = number(calibration.dpi_y(), 0);
    return Wording::tr("%1 dpi, by %2").arg(x == y ? x : Wording::tr("%1 × %2").arg(x, y), name_of(calibration.source));
}

QString in_full(const Calibration& calibration) {
    return Wording::tr("%1, ± %2 %").arg(in_words(calibration), number(100.0 * calibration.relative_sd, 2));
}

QString in_words(const BarkEnd& bark_end) {
    const QString how = QString::fromStdString(bark_end.how);
    if (how == "given") {
        return Wording::tr("As you said");
    }
    const QString source = how == "bark"        ? Wording::tr("bark is seen")
                           : how == "polarity"  ? Wording::tr("by latewood edges")
                           : how == "curvature" ? Wording::tr("by ring curvature")
                                                : how;
    const QString percent =
        bark_end.probability > 0.99 ? Wording::tr("over 99") : number(100.0 * bark_end.probability, 0);
    return Wording::tr("%1 % sure, %2").arg(percent, source);
}

QString in_words(Millimetres length, int decimals) {
    return Wording::tr("%1 mm").arg(number(length.value(), decimals));
}

QString in_words(const Tree& tree, const Core& core) {
    QStringList parts{QString::fromStdString(tree.id)};
    if (!tree.species.empty()) {
        parts << QString::fromStdString(tree.species);
    }
    if (!core.date_cored.empty()) {
        parts << Wording::tr("cored %1").arg(QString::fromStdString(core.date_cored));
    }
    return parts.join(", ");
}

QString in_full(const Site& site, const Tree& tree, const Core& core) {
    QStringList lines{Wording::tr("Site %1: %2").arg(QString::fromStdString(site.id), in_words(tree, core))};
    if (tree.dbh_cm) {
        lines << Wording::tr("Stem at breast height: %1 cm").arg(number(*tree.dbh_cm, 1));
    }
    if (core.azimuth_deg) {
        lines << Wording::tr("Bored from %1°").arg(number(*core.azimuth_deg, 0));
    }
    if (!core.notes.empty()) {
        lines << QString::fromStdString(core.notes);
    }
    return lines.join('\n');
}

QString name_of(Pith::Source source) {
    switch (source) {
    case Pith::Source::Curves:
        return Wording::tr("by the curve of the rings");
    case Pith::Source::Seen:
        return Wording::tr("seen on the core");
    case Pith::Source::Hand:
        return Wording::tr("placed by hand");
    }
    return {};
}

QString rings_in_words(const Pith& pith) {
    return pith.missing_low == pith.missing_high
               ? QString::number(pith.missing_rings)
               : Wording::tr("%1 (%2 to %3)").arg(pith.missing_rings).arg(pith.missing_low).arg(pith.missing_high);
}

QString pith_in_short(const Pith& pith) {
    return pith.inside && pith.missing_rings == 0 ? QString()
                                                  : Wording::tr("%1 rings to the pith").arg(rings_in_words(pith));
}

QString distance_in_words(const Pith& pith) {
    return Wording::tr("%1 mm (%2 to %3)")
        .arg(number(pith.distance.value(), 1), number(pith.distance_low.value(), 1),
             number(pith.distance_high.value(), 1));
}

QString in_words(const OtherPith& other) {
    const QString low = number(other.distance_low.value(), 1);
    const QString range = other.distance_high
                              ? Wording::tr("%1 to %2").arg(low, number(other.distance_high->value(), 1))
                              : Wording::tr("%1 or more").arg(low);
    return Wording::tr("%1 mm (%2), %3 rings").arg(number(other.distance.value(), 1), range).arg(other.missing_rings);
}

QString in_words(const YearRange& range) {
    return range.low == range.high
               ? QString::number(range.year.value())
               : Wording::tr("%1 (%2 to %3)").arg(range.year.value()).arg(range.low.value()).arg(range.high.value());
}

QString name_of(const Ring& ring) {
    return ring.year ? QString::number(ring.year->value()) : Wording::tr("Ring %1").arg(ring.number);
}

QString ring_in_short(const Ring& ring) {
    return Wording::tr("%1 · %2").arg(name_of(ring), width_of(ring, false));
}

QString ring_in_full(const Ring& ring) {
    if (!ring.year) {
        return Wording::tr("Ring %1 from the bark: %2").arg(ring.number).arg(width_of(ring, true));
    }
    return Wording::tr("%1, ring %2 from the bark: %3").arg(name_of(ring)).arg(ring.number).arg(width_of(ring, true));
}

} // namespace pithward::bench
