#include "app/picture/dating/chronology_sheet.h"

#include "app/picture/dating/chronology_bands.h"
#include "app/picture/dating/legend.h"

namespace pithward::picture {

namespace {

void paint_head(QPainter& painter, const YearAxis& axis, const QRectF& head, const QString& title) {
    paint_title(painter, title);
    Legend legend(painter, head.top() + 38.0);
    legend.add_line(QStringLiteral("mean of the indices"), QPen(dark_ink, 1.1));
    legend.add(QStringLiteral("90 % interval by drawing trees anew"), 24.0,
               [&](const QRectF& place) { painter.fillRect(place, print_inks().interval); });
    legend.add(QStringLiteral("most trees wide"), 10.0,
               [&](const QRectF& place) { paint_pointer(painter, place.center().x(), place.bottom() - 2.0, true); });
    legend.add(QStringLiteral("most trees narrow"), 10.0,
               [&](const QRectF& place) { paint_pointer(painter, place.center().x(), place.top() + 3.0, false); });
    legend.add_line(QStringLiteral("0.85, the usual least signal"), QPen(soft_ink, 0.8, Qt::DotLine));
    painter.setPen(soft_ink);
    painter.setFont(sheet_font(9.0));
    axis.paint_years(painter, head.bottom() - 2.0);
}

} // namespace

Sheet chronology_sheet(const dating::Chronology& chronology, std::optional<double> breadth) {
    const int first = chronology.years.empty() ? 0 : chronology.years.front().year;
    const int last = chronology.years.empty() ? 0 : chronology.years.back().year;
    const double left = sheet_margin + scale_breadth;
    const YearAxis axis(first, last, left, left + breadth.value_or(YearAxis::breadth_for(first, last)));
    Sheet sheet{QStringLiteral("Site chronology"), axis.right() + sheet_margin, 70.0, {200.0, 100.0, 110.0}, {}, {}};
    sheet.paint_head = [axis, title = sheet.title](QPainter& painter, const QRectF& head) {
        paint_head(painter, axis, head, title);
    };
    sheet.paint_row = [axis, &chronology](QPainter& painter, const QRectF& row, std::size_t i) {
        axis.paint_lines(painter, row.top(), row.bottom());
        const QRectF box(axis.left(), row.top() + 12.0, axis.right() - axis.left(), row.height() - 24.0);
        if (i == 0) {
            paint_values(painter, axis, box, chronology, QStringLiteral("ring-width index"));
        } else if (i == 1) {
            paint_depth(painter, axis, box, chronology, QStringLiteral("series (grey) and trees (dashed)"));
        } else {
            paint_signal(painter, axis, box, chronology,
                         QStringLiteral("expressed population signal, each over its window"));
        }
    };
    return sheet;
}

} // namespace pithward::picture
