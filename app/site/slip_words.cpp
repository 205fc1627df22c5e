#include "app/site/slip_words.h"

#include "app/bench/look/sentences.h"

#include <QCoreApplication>
#include <QStringList>
#include <variant>

namespace pithward::bench {

namespace {

struct SiteWords {
    Q_DECLARE_TR_FUNCTIONS(SiteWords)
};

QString sureness(double probability) {
    constexpr double nearly_all = 0.995;
    constexpr double nearly_none = 0.005;
    if (probability > nearly_all) {
        return SiteWords::tr("over 99 %");
    }
    return probability < nearly_none ? SiteWords::tr("under 1 %")
                                     : SiteWords::tr("%1 %").arg(100.0 * probability, 0, 'f', 0);
}

QString state_of(const Finding& finding) {
    switch (finding.state) {
    case Finding::State::Open:
        return SiteWords::tr("noted as a finding");
    case Finding::State::KeptAsItIs:
        return SiteWords::tr("settled: it is not so");
    case Finding::State::CannotBeTold:
        return SiteWords::tr("settled: it can't be told");
    case Finding::State::ProposalTaken:
        return SiteWords::tr("settled: accepted");
    }
    return {};
}

struct ChangeWords {
    QString year;

    QString operator()(std::monostate /*words*/) const { return SiteWords::tr("Accept"); }
    QString operator()(const ProposeBoundary& /*change*/) const {
        return SiteWords::tr("Put the boundary of %1 in").arg(year);
    }
    QString operator()(const ProposeRemoval& /*change*/) const {
        return SiteWords::tr("Take the boundary in %1 out").arg(year);
    }
    QString operator()(const ProposeAbsentRing& /*change*/) const {
        return SiteWords::tr("Mark %1 as locally absent").arg(year);
    }
    QString operator()(const ProposeBreak& /*change*/) const { return SiteWords::tr("Accept"); }
};

QString shift_in_words(int years) {
    return years > 0
               ? SiteWords::tr("All of it fits better %1 later: its last year is wrong, or a ring too many was counted "
                               "at the bark")
                     .arg(years == 1 ? SiteWords::tr("a year") : SiteWords::tr("%1 years").arg(years))
               : SiteWords::tr("All of it fits better %1 earlier: its last year is wrong, or a ring at the bark was "
                               "overlooked")
                     .arg(years == -1 ? SiteWords::tr("a year") : SiteWords::tr("%1 years").arg(-years));
}

QString undated_in_words(const dating::UndatedResult& series) {
    if (series.places.empty()) {
        return SiteWords::tr("No position has enough years in common with the others");
    }
    const dating::RankedMatch& best = series.places.front();
    return SiteWords::tr("Fits best as %1 to %2, r %3; by chance alone so well in %4")
        .arg(series.first_year_at(best))
        .arg(series.last_year_at(best))
        .arg(two_decimals(best.match.r))
        .arg(sureness(best.chance_of_best));
}

} // namespace

QString two_decimals(double value) {
    const QString digits = QString::number(value, 'f', 2);
    return digits == QLatin1String("-0.00") ? digits.mid(1) : QString(digits).replace('-', QChar(0x2212));
}

QString title_of(const SiteDating& dating, const SiteLine& line) {
    const QString name = QString::fromStdString(dating.core(line).name);
    if (const dating::UndatedResult* undated = dating.undated(line)) {
        return SiteWords::tr("%1 · %2 rings without years").arg(name).arg(undated->rings);
    }
    const dating::DatedResult& series = *dating.dated(line);
    const QString title = SiteWords::tr("%1 · %2 to %3").arg(name).arg(series.first_year).arg(series.last_year);
    return series.agreement.r ? SiteWords::tr("%1 · r %2").arg(title).arg(two_decimals(*series.agreement.r)) : title;
}

QString verdict_of(const SiteDating& dating, const SiteLine& line) {
    if (const dating::UndatedResult* undated = dating.undated(line)) {
        return undated_in_words(*undated);
    }
    const dating::DatedResult& series = *dating.dated(line);
    QStringList lines;
    for (std::size_t i = 0; i < series.slips.size(); ++i) {
        const QString words =
            SiteWords::tr("%1, %2 sure").arg(title_of(series.slips[i]), sureness(series.slips[i].probability));
        const Finding* finding = dating.noted(line, i);
        lines << (finding != nullptr ? SiteWords::tr("%1 (%2)").arg(words, state_of(*finding)) : words);
    }
    if (series.whole_shift != 0) {
        lines << shift_in_words(series.whole_shift);
    }
    for (const std::string& remark : series.remarks) {
        lines << QString::fromStdString(remark);
    }
    constexpr double chance_in_a_hundred = 0.01;
    if (lines.isEmpty()) {
        lines << (series.agreement.chance < chance_in_a_hundred
                      ? SiteWords::tr("Goes with the others as it is dated")
                      : SiteWords::tr("Tells little: it hardly goes with the others, at no other years either"));
    }
    return lines.join('\n');
}

QString title_of(const dating::Slip& slip) {
    return slip.kind == dating::Slip::Kind::RingMissing
               ? SiteWords::tr("Ring %1 is missing").arg(slip.ring_year())
               : SiteWords::tr("Ring %1 is counted twice").arg(slip.ring_year());
}

QString certainty_of(const dating::Slip& slip) {
    const QString sure = SiteWords::tr("The other cores are %1 sure of it.").arg(sureness(slip.probability));
    if (slip.ring_from() == slip.ring_to()) {
        return SiteWords::tr("%1 With 90 % it is this year and no other.").arg(sure);
    }
    return SiteWords::tr("%1 With 90 % it lies between %2 and %3.").arg(sure).arg(slip.ring_from()).arg(slip.ring_to());
}

QString line_of(const dating::SlipPlace& place) {
    return SiteWords::tr("%1 · %2 · %3")
        .arg(place.ring_year)
        .arg(sureness(place.probability), in_window_language(place.place.reason));
}

QString words_of_change(const dating::SlipPlace& place) {
    return std::visit(ChangeWords{QString::number(place.ring_year)}, place.place.change);
}

QString words_of_shift(int years) {
    return years > 0 ? SiteWords::tr("Add %1 to all of its years").arg(years)
                     : SiteWords::tr("Take %1 off all of its years").arg(-years);
}

QString summary_of(const SiteDating& dating) {
    const dating::SiteResult& site = dating.result.site;
    QStringList lines{SiteWords::tr("%1 trees").arg(site.trees)};
    if (site.series_intercorrelation) {
        lines[0] = SiteWords::tr("%1; a series goes with the others by r %2 on average")
                       .arg(lines[0], two_decimals(*site.series_intercorrelation));
    }
    if (dating.cores.without > 0) {
        lines << SiteWords::tr("Cores that are not read yet: %1").arg(dating.cores.without);
    }
    for (const Fault& fault : dating.cores.left_out) {
        lines << SiteWords::tr("Left out: %1").arg(QString::fromStdString(fault.line()));
    }
    return lines.join('\n');
}

QString what_is_needed(const SiteCores& cores) {
    QStringList lines{
        SiteWords::tr("Dating holds each series against the others: it takes at least three series with calendar "
                      "years, of two trees or more. This project has %1.")
            .arg(dated_series(cores))};
    const std::size_t undated = cores.cores.size() - dated_series(cores);
    if (undated > 0) {
        lines << SiteWords::tr("Without years: %1. Set the year of the outermost ring on the bench (Y).").arg(undated);
    }
    if (cores.without > 0) {
        lines << SiteWords::tr("Not read yet: %1. Measure them on the bench, or all at once with pithward measure.")
                     .arg(cores.without);
    }
    for (const Fault& fault : cores.left_out) {
        lines << QString::fromStdString(fault.line());
    }
    return lines.join(QStringLiteral("\n\n"));
}

} // namespace pithward::bench
