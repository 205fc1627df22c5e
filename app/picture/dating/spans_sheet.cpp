#include "app/picture/dating/spans_sheet.h"

#include "app/picture/dating/ink.h"
#include "app/picture/dating/legend.h"

#include <algorithm>
#include <memory>

namespace pithward::picture {

namespace {

constexpr double span_names = 96.0;  ///< Breadth of the column of names.
constexpr double span_height = 15.0; ///< From series to series.
const QColor span_tone(0x55, 0x5b, 0x60);

int first_shown(const SeriesSpan& span) {
    return span.pith ? std::min(span.first, span.pith->low.value()) : span.first;
}

void paint_pith_interval(QPainter& painter, double low, double middle, double high, double y) {
    painter.setPen(QPen(dark_ink, 0.8));
    painter.drawLine(QPointF(low, y), QPointF(high, y));
    for (const double x : {low, high}) {
        painter.drawLine(QPointF(x, y - 2.5), QPointF(x, y + 2.5));
    }
    painter.setBrush(Qt::white);
    painter.drawEllipse(QPointF(middle, y), 2.4, 2.4);
    painter.setBrush(Qt::NoBrush);
}

void paint_span(QPainter& painter, const YearAxis& axis, const QRectF& row, const SeriesSpan& span) {
    axis.paint_lines(painter, row.top(), row.bottom());
    const double y = row.center().y();
    painter.fillRect(QRectF(QPointF(axis.at(span.first - 0.5), y - 3.0), QPointF(axis.at(span.last + 0.5), y + 3.0)),
                     span_tone);
    if (span.pith) {
        const double pith = axis.at(span.pith->year.value());
        painter.setPen(QPen(soft_ink, 0.9, Qt::DotLine));
        painter.drawLine(QPointF(pith, y), QPointF(axis.at(span.first - 0.5), y));
        paint_pith_interval(painter, axis.at(span.pith->low.value()), pith, axis.at(span.pith->high.value()), y);
    }
    painter.setPen(dark_ink);
    painter.setFont(sheet_font(9.0));
    const QString name = QString::fromStdString(span.name);
    painter.drawText(QRectF(sheet_margin, row.top(), span_names - 8.0, row.height()), Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(name, Qt::ElideRight, qRound(span_names - 8.0)));
}

} // namespace

Sheet spans_sheet(std::vector<SeriesSpan> spans, double breadth) {
    std::ranges::stable_sort(spans, {}, first_shown);
    const int first = spans.empty() ? 0 : first_shown(spans.front());
    int last = first;
    for (const SeriesSpan& span : spans) {
        last = std::max(last, span.last);
    }
    const double left = sheet_margin + span_names;
    const YearAxis axis(first, last, left, left + breadth);
    Sheet sheet{QString(), axis.right() + sheet_margin, 34.0, {}, {}, {}};
    sheet.rows.assign(spans.size(), span_height);
    sheet.paint_head = [axis](QPainter& painter, const QRectF& head) {
        Legend legend(painter, head.top() + 4.0);
        legend.add(QStringLiteral("rings measured"), 24.0,
                   [&](const QRectF& place) { painter.fillRect(place.adjusted(0.0, 2.0, 0.0, -2.0), span_tone); });
        legend.add(QStringLiteral("pith at the height of the core, 90 % interval"), 24.0, [&](const QRectF& place) {
            paint_pith_interval(painter, place.left(), place.center().x(), place.right(), place.center().y());
        });
        painter.setPen(soft_ink);
        painter.setFont(sheet_font(9.0));
        axis.paint_years(painter, head.bottom() - 2.0);
    };
    const auto kept = std::make_shared<const std::vector<SeriesSpan>>(std::move(spans));
    sheet.paint_row = [axis, kept](QPainter& painter, const QRectF& row, std::size_t i) {
        paint_span(painter, axis, row, (*kept)[i]);
    };
    return sheet;
}

} // namespace pithward::picture
