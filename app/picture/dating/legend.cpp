#include "app/picture/dating/legend.h"

#include "app/picture/dating/ink.h"

namespace pithward::picture {

void paint_title(QPainter& painter, const QString& title) {
    painter.setPen(dark_ink);
    painter.setFont(sheet_font(15.0, true));
    painter.drawText(QPointF(sheet_margin, sheet_margin + 6.0), title);
    painter.setFont(sheet_font(9.0));
}

Legend::Legend(QPainter& painter, double top)
    : painter_(painter)
    , top_(top) {}

void Legend::add(const QString& words, double breadth, const std::function<void(const QRectF&)>& sample) {
    constexpr double height = 10.0;
    constexpr double beside = 5.0;
    constexpr double apart = 18.0;
    sample(QRectF(x_, top_, breadth, height));
    painter_.setPen(dark_ink);
    painter_.setFont(sheet_font(9.0));
    painter_.drawText(QPointF(x_ + breadth + beside, top_ + height - 1.0), words);
    x_ += breadth + beside + painter_.fontMetrics().horizontalAdvance(words) + apart;
}

void Legend::add_line(const QString& words, const QPen& pen) {
    add(words, 24.0, [&](const QRectF& place) {
        painter_.setPen(pen);
        painter_.drawLine(QPointF(place.left(), place.center().y()), QPointF(place.right(), place.center().y()));
    });
}

} // namespace pithward::picture
