#include "app/progress/stage_form.h"

#include <QPainter>

namespace pithward::bench {

namespace {

void paint_triangle(QPainter& painter, const QRectF& box, const QColor& ink, double line) {
    const QPointF top(box.center().x(), box.top());
    painter.setPen(QPen(ink, line, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolygon(QPolygonF{top, box.bottomRight(), box.bottomLeft()});
    const double height = box.height();
    painter.drawLine(QPointF(top.x(), box.top() + 0.38 * height), QPointF(top.x(), box.top() + 0.68 * height));
    painter.drawPoint(QPointF(top.x(), box.top() + 0.85 * height));
}

} // namespace

void paint_form(QPainter& painter, progress::HowFar how, const QRectF& box, const QColor& ink, const QColor& warning) {
    constexpr double line = 1.5;
    const QRectF inside = box.adjusted(line, line, -line, -line);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (how == progress::HowFar::WantsLook) {
        paint_triangle(painter, inside, warning, line);
        painter.restore();
        return;
    }
    painter.setPen(QPen(ink, line));
    painter.setBrush(how == progress::HowFar::Done ? QBrush(ink) : QBrush(Qt::NoBrush));
    painter.drawEllipse(inside);
    if (how == progress::HowFar::Partly) {
        constexpr int quarter = 90 * 16; // a painter's degrees
        painter.setBrush(ink);
        painter.setPen(Qt::NoPen);
        painter.drawPie(inside, quarter, 2 * quarter);
    }
    painter.restore();
}

} // namespace pithward::bench
