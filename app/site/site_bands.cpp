#include "app/site/site_bands.h"

#include "app/bench/look/wording.h"
#include "app/picture/dating/agreement_bars.h"
#include "app/picture/dating/chronology_bands.h"
#include "app/picture/dating/series_lines.h"
#include "app/picture/dating/slip_marks.h"
#include "app/site/site_dating.h"
#include "app/site/slip_words.h"

#include <QEvent>
#include <QPainter>
#include <QtMath>
#include <algorithm>

namespace pithward::bench {

namespace {

constexpr double band_row_height = 26.0;
constexpr double head_height = 18.0; // Where the years stand.
constexpr double name_left = 12.0;

/// What lies over the years that are shown, and nothing beside them.
QRectF over_years(const picture::YearAxis& axis, const QRectF& place) {
    return {axis.left(), place.top(), axis.right() - axis.left(), place.height()};
}

void paint_name(QPainter& painter, const QRectF& place, const QString& name, bool bold, const QColor& ink) {
    painter.setPen(ink);
    painter.setFont(picture::sheet_font(9.0, bold));
    painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(name, Qt::ElideRight, static_cast<int>(place.width())));
}

const SiteLine* chosen_line(const std::shared_ptr<const SiteDating>& dating, int chosen) {
    return dating && chosen >= 0 && chosen < static_cast<int>(dating->lines.size())
               ? &dating->lines[static_cast<std::size_t>(chosen)]
               : nullptr;
}

} // namespace

void AgreementBand::show(std::shared_ptr<const SiteDating> dating, int chosen) {
    dating_ = std::move(dating);
    chosen_ = chosen;
    fit();
    update();
}

void AgreementBand::fit() {
    const double rows = dating_ ? static_cast<double>(dating_->lines.size()) : 0.0;
    setMinimumHeight(qCeil((head_height + rows * band_row_height + 6.0) * unit()));
}

QRect AgreementBand::chosen_row() const {
    const double top = head_height + std::max(0, chosen_) * band_row_height;
    return QRectF(0.0, top * unit(), width(), band_row_height * unit()).toAlignedRect();
}

void AgreementBand::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) {
        fit();
    }
    YearBand::changeEvent(event);
}

void AgreementBand::clicked(QPointF at, int year) {
    const int line = qFloor((at.y() - head_height) / band_row_height);
    if (chosen_line(dating_, line) != nullptr) {
        years().point_at(year);
        emit line_chosen(line);
    }
}

void AgreementBand::paint_band(QPainter& painter, const picture::YearAxis& axis, const QRectF& place,
                               const picture::Inks& inks) {
    painter.setPen(inks.soft);
    painter.setFont(picture::sheet_font(9.0));
    axis.paint_years(painter, head_height - 3.0);
    if (!dating_) {
        return;
    }
    const int rows = static_cast<int>(dating_->lines.size());
    axis.paint_lines(painter, head_height, head_height + rows * band_row_height, inks.grid);
    for (int row = 0; row < rows; ++row) {
        const SiteLine& line = dating_->lines[static_cast<std::size_t>(row)];
        const QRectF strip(0.0, head_height + row * band_row_height, place.width(), band_row_height);
        if (row == chosen_) {
            painter.fillRect(QRectF(0.0, strip.top(), 4.0, strip.height()), inks.dark);
        }
        const QRectF words(name_left, strip.top() + 4.0, axis.left() - name_left - 6.0, strip.height() - 6.0);
        const QString name = QString::fromStdString(dating_->core(line).name);
        const dating::DatedResult* series = dating_->dated(line);
        if (series == nullptr) {
            paint_name(painter, words, tr("%1 · no years").arg(name), row == chosen_, inks.soft);
            continue;
        }
        const QString r =
            series->agreement.r ? tr("%1 · r %2").arg(name).arg(two_decimals(*series->agreement.r)) : name;
        paint_name(painter, words, r, row == chosen_, inks.dark);
        painter.save();
        painter.setClipRect(over_years(axis, strip));
        picture::paint_agreement(painter, axis, over_years(axis, strip.adjusted(0.0, 7.0, 0.0, -4.0)), series->segments,
                                 inks);
        picture::paint_slips(painter, axis, strip.adjusted(0.0, 1.0, 0.0, -4.0), series->slips, false, inks);
        painter.restore();
    }
}

void SeriesBand::show(std::shared_ptr<const SiteDating> dating, int chosen) {
    dating_ = std::move(dating);
    chosen_ = chosen;
    update();
}

QSize SeriesBand::sizeHint() const {
    return {400, qCeil(150.0 * unit())};
}

QString SeriesBand::pointed_in_words() {
    const SiteLine* line = chosen_line(dating_, chosen_);
    const auto year = years().pointed();
    if (line == nullptr || !year || !line->dated) {
        return {};
    }
    const SiteCore& core = dating_->core(*line);
    const QString name = QString::fromStdString(core.name);
    const Ring* ring = ring_of_year(core, *year);
    return ring != nullptr ? tr("%1, %2").arg(name, ring_in_full(*ring))
                           : tr("%1 has no ring of %2").arg(name).arg(*year);
}

void SeriesBand::paint_band(QPainter& painter, const picture::YearAxis& axis, const QRectF& place,
                            const picture::Inks& inks) {
    const SiteLine* line = chosen_line(dating_, chosen_);
    const dating::DatedResult* series = line != nullptr ? dating_->dated(*line) : nullptr;
    painter.setPen(inks.soft);
    painter.setFont(picture::sheet_font(9.0));
    axis.paint_years(painter, place.bottom() - 3.0);
    const QRectF lines(axis.left(), 20.0, axis.right() - axis.left(), place.height() - 40.0);
    axis.paint_lines(painter, lines.top(), lines.bottom(), inks.grid);
    if (series == nullptr) {
        painter.setPen(inks.soft);
        painter.drawText(lines, Qt::AlignCenter, line != nullptr ? tr("This series has no years yet.") : QString());
        return;
    }
    painter.save();
    painter.setClipRect(lines.adjusted(0.0, -20.0, 0.0, 0.0));
    picture::paint_on_others(painter, axis, lines, *series, inks);
    picture::paint_slips(painter, axis, QRectF(lines.left(), 6.0, lines.width(), lines.bottom() - 6.0), series->slips,
                         true, inks);
    painter.restore();
    const double breadth = axis.left() - name_left - 8.0;
    paint_name(painter, {name_left, 18.0, breadth, 14.0}, QString::fromStdString(series->id), true, inks.dark);
    const auto sample = [&](double y, const QPen& pen, const QString& words) {
        painter.setPen(pen);
        painter.drawLine(QPointF(name_left, y), QPointF(name_left + 18.0, y));
        paint_name(painter, {name_left + 23.0, y - 7.0, breadth - 23.0, 14.0}, words, false, inks.soft);
    };
    sample(42.0, QPen(inks.dark, 0.9), tr("its growth"));
    sample(57.0, QPen(inks.mean, 3.0), tr("mean of the others"));
}

void ChronologyBand::show(std::shared_ptr<const SiteDating> dating) {
    dating_ = std::move(dating);
    update();
}

QSize ChronologyBand::sizeHint() const {
    return {400, qCeil(230.0 * unit())};
}

void ChronologyBand::paint_band(QPainter& painter, const picture::YearAxis& axis, const QRectF& place,
                                const picture::Inks& inks) {
    painter.setPen(inks.soft);
    painter.setFont(picture::sheet_font(9.0));
    axis.paint_years(painter, place.bottom() - 3.0);
    if (!dating_) {
        return;
    }
    const double room = place.height() - 18.0;
    constexpr double above = 16.0;
    const auto box = [&](double from, double to) {
        return QRectF(axis.left(), from * room + above, axis.right() - axis.left(), (to - from) * room - above - 4.0);
    };
    axis.paint_lines(painter, 4.0, room, inks.grid);
    const dating::Chronology& chronology = dating_->chronology;
    picture::paint_values(painter, axis, box(0.0, 0.46), chronology, tr("Mean of the site, with its 90 % interval"),
                          inks);
    picture::paint_depth(painter, axis, box(0.46, 0.71), chronology, tr("Series (shaded) and trees (dashed)"), inks);
    picture::paint_signal(painter, axis, box(0.71, 1.0), chronology,
                          tr("EPS, the signal that the trees share; dotted: 0.85, the usual least"), inks);
}

} // namespace pithward::bench
