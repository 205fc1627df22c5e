#include "app/picture/dating/crossdate_sheets.h"

#include "app/picture/dating/agreement_bars.h"
#include "app/picture/dating/ink.h"
#include "app/picture/dating/legend.h"
#include "app/picture/dating/series_lines.h"
#include "app/picture/dating/slip_marks.h"

#include <algorithm>
#include <utility>

namespace pithward::picture {

namespace {

constexpr double names = 118.0; ///< Breadth of the column of names.

std::pair<int, int> years_of(const dating::CrossdateResult& result) {
    if (result.dated.empty()) {
        return {0, 0};
    }
    const auto first = std::ranges::min_element(result.dated, {}, &dating::DatedResult::first_year);
    const auto last = std::ranges::max_element(result.dated, {}, &dating::DatedResult::last_year);
    return {first->first_year, last->last_year};
}

YearAxis axis_of(const dating::CrossdateResult& result, std::optional<double> breadth = {}) {
    const auto [first, last] = years_of(result);
    const double left = sheet_margin + names;
    return {first, last, left, left + breadth.value_or(YearAxis::breadth_for(first, last))};
}

QString name_of(const dating::DatedResult& series) {
    return QString::fromUtf8(series.id.data(), static_cast<qsizetype>(series.id.size()));
}

/// `chance`: that of a fit at another shift; 1 for one that chance explains.
void add_bar(Legend& legend, QPainter& painter, const QString& words, int shift, double chance) {
    const dating::Segment sample{0, 0, 1.0, shift, 1.0, chance};
    const bool moved = fits_elsewhere(sample);
    legend.add(words, moved ? 22.0 : 12.0, [&](const QRectF& place) {
        paint_agreement(painter, YearAxis(0, 0, place.left(), place.right()),
                        place.adjusted(0.0, moved ? 5.0 : 0.0, 0.0, 0.0), std::span(&sample, 1));
    });
}

void add_slip(Legend& legend, QPainter& painter, const QString& words, dating::Slip::Kind kind) {
    const dating::Slip sample{kind, 0, 0, 0, 1.0};
    legend.add(words, 14.0, [&](const QRectF& place) {
        paint_slips(painter, YearAxis(-1, 1, place.left(), place.right()), place, std::span(&sample, 1), false);
    });
}

void add_agreement(Legend& legend, QPainter& painter, int length) {
    add_bar(legend, painter, QStringLiteral("%1 years that fit best as dated; height: correlation, 0 to 1").arg(length),
            0, 0.0);
    add_bar(legend, painter, QStringLiteral("fit clearly better with these years added"), 1, 0.0);
    add_bar(legend, painter, QStringLiteral("fit at no years better than by chance"), 1, 1.0);
}

void add_slips(Legend& legend, QPainter& painter) {
    add_slip(legend, painter, QStringLiteral("a ring is missing, 90 % range"), dating::Slip::Kind::RingMissing);
    add_slip(legend, painter, QStringLiteral("a ring is counted twice"), dating::Slip::Kind::RingTooMany);
}

/// Words for a series that no line can tell of.
QString remarks_of(const dating::DatedResult& series) {
    QStringList words;
    if (series.whole_shift != 0) {
        words << QStringLiteral("add %1 to its last year").arg(series.whole_shift);
    }
    for (const std::string& remark : series.remarks) {
        words << QString::fromStdString(remark);
    }
    return words.join(QStringLiteral("; "));
}

void paint_series_row(QPainter& painter, const YearAxis& axis, const QRectF& row, const dating::DatedResult& series) {
    constexpr double bars = 20.0;
    const QRectF lines(axis.left(), row.top() + 16.0, axis.right() - axis.left(), row.height() - 40.0 - bars);
    const QRectF below(axis.left(), lines.bottom() + 8.0, lines.width(), bars);
    axis.paint_lines(painter, row.top(), row.bottom());
    paint_on_others(painter, axis, lines, series);
    paint_agreement(painter, axis, below, series.segments);
    paint_slips(painter, axis, QRectF(lines.left(), row.top() + 2.0, lines.width(), lines.bottom() - row.top()),
                series.slips, true);
    painter.setPen(dark_ink);
    painter.setFont(sheet_font(11.0, true));
    painter.drawText(QRectF(sheet_margin, row.top() + 14.0, names - 8.0, 15.0), Qt::AlignLeft, name_of(series));
    painter.setFont(sheet_font(9.0));
    painter.setPen(soft_ink);
    const QString years = QStringLiteral("%1 to %2").arg(series.first_year).arg(series.last_year);
    const QString r = series.agreement.r ? QStringLiteral("r %1").arg(*series.agreement.r, 0, 'f', 2) : QString();
    painter.drawText(QRectF(sheet_margin, row.top() + 30.0, names - 8.0, 30.0), Qt::AlignLeft, years + u'\n' + r);
    if (const QString words = remarks_of(series); !words.isEmpty()) {
        painter.setPen(warning_ink);
        painter.drawText(QRectF(axis.left(), row.bottom() - 11.0, lines.width(), 11.0), Qt::AlignLeft, words);
    }
}

void paint_agreement_row(QPainter& painter, const YearAxis& axis, const QRectF& row,
                         const dating::DatedResult& series) {
    axis.paint_lines(painter, row.top(), row.bottom());
    const QRectF place(axis.left(), row.top() + 9.0, axis.right() - axis.left(), row.height() - 14.0);
    paint_agreement(painter, axis, place, series.segments);
    paint_slips(painter, axis, row.adjusted(0.0, 1.0, 0.0, -5.0), series.slips, false);
    painter.setPen(dark_ink);
    painter.setFont(sheet_font(9.0));
    const QString r = series.agreement.r ? QStringLiteral("  %1").arg(*series.agreement.r, 0, 'f', 2) : QString();
    painter.drawText(QRectF(sheet_margin, place.bottom() - 11.0, names - 8.0, 12.0), Qt::AlignLeft,
                     name_of(series) + r);
}

} // namespace

Sheet series_sheet(const dating::CrossdateResult& result) {
    constexpr double row = 130.0;
    const YearAxis axis = axis_of(result);
    Sheet sheet{QStringLiteral("Each series on the mean of the others"), axis.right() + sheet_margin, 82.0, {}, {}, {}};
    sheet.rows.assign(result.dated.size(), row);
    sheet.paint_head = [axis, title = sheet.title, length = result.length](QPainter& painter, const QRectF& head) {
        paint_title(painter, title);
        Legend lines(painter, head.top() + 38.0);
        lines.add_line(QStringLiteral("the series"), QPen(dark_ink, 0.9));
        lines.add_line(QStringLiteral("mean of the others"), QPen(mean_ink, 3.0));
        add_slips(lines, painter);
        Legend bars(painter, head.top() + 54.0);
        add_agreement(bars, painter, length);
        painter.setPen(soft_ink);
        axis.paint_years(painter, head.bottom() - 2.0);
    };
    sheet.paint_row = [axis, &result](QPainter& painter, const QRectF& place, std::size_t i) {
        paint_series_row(painter, axis, place, result.dated[i]);
    };
    return sheet;
}

Sheet agreement_sheet(const dating::CrossdateResult& result, std::optional<double> breadth) {
    constexpr double row = 30.0;
    const YearAxis axis = axis_of(result, breadth);
    Sheet sheet{QStringLiteral("Where the series agree, through time"), axis.right() + sheet_margin, 82.0, {}, {}, {}};
    sheet.rows.assign(result.dated.size(), row);
    sheet.paint_head = [axis, title = sheet.title, length = result.length](QPainter& painter, const QRectF& head) {
        paint_title(painter, title);
        Legend bars(painter, head.top() + 38.0);
        add_agreement(bars, painter, length);
        Legend slips(painter, head.top() + 54.0);
        add_slips(slips, painter);
        painter.setPen(soft_ink);
        axis.paint_years(painter, head.bottom() - 2.0);
    };
    sheet.paint_row = [axis, &result](QPainter& painter, const QRectF& place, std::size_t i) {
        paint_agreement_row(painter, axis, place, result.dated[i]);
    };
    return sheet;
}

} // namespace pithward::picture
