#include "app/picture/dating/slip_marks.h"

namespace pithward::picture {

namespace {

/// A bracket with its point toward the lines, or away from them.
QPolygonF bracket(double left, double middle, double right, double top, bool down) {
    constexpr double ear = 4.0;
    constexpr double point = 4.0;
    const double tip = down ? top + ear + point : top;
    const double bar = top + ear;
    return {{left, bar + (down ? -ear : ear)},
            {left, bar},
            {middle - point, bar},
            {middle, tip},
            {middle + point, bar},
            {right, bar},
            {right, bar + (down ? -ear : ear)}};
}

void paint_one(QPainter& painter, const YearAxis& axis, const QRectF& place, const dating::Slip& slip, bool with_words,
               const Inks& inks) {
    const bool missing = slip.kind == dating::Slip::Kind::RingMissing;
    const double x = axis.at(slip.ring_year());
    painter.setPen(QPen(inks.warning, 1.0, Qt::DashLine));
    painter.drawLine(QPointF(x, place.top() + 4.0), QPointF(x, place.bottom()));
    painter.setPen(QPen(inks.warning, 1.2));
    painter.setBrush(Qt::NoBrush);
    const double left = std::min(axis.at(slip.ring_from() - 0.5), x - 5.0);
    const double right = std::max(axis.at(slip.ring_to() + 0.5), x + 5.0);
    painter.drawPolyline(bracket(left, x, right, place.top(), missing));
    if (!with_words) {
        return;
    }
    constexpr double nearly_sure = 0.995;
    const QString sure = slip.probability > nearly_sure
                             ? QStringLiteral("over 99 %")
                             : QStringLiteral("%1 %").arg(100.0 * slip.probability, 0, 'f', 0);
    const QString words = QStringLiteral("%1, %2").arg(QString::fromStdString(dating::words_of(slip)), sure);
    painter.setFont(sheet_font(9.0, true));
    const double breadth = painter.fontMetrics().horizontalAdvance(words) + 4.0;
    const bool leftward = right + breadth > axis.right();
    const QRectF box(leftward ? left - breadth - 3.0 : right + 3.0, place.top() - 2.0, breadth, 12.0);
    QColor ground = inks.ground;
    ground.setAlpha(225);
    painter.fillRect(box, ground);
    if (leftward) {
        painter.drawText(box, Qt::AlignVCenter | Qt::AlignRight, words);
    } else {
        painter.drawText(box, Qt::AlignVCenter | Qt::AlignLeft, words);
    }
}

} // namespace

void paint_slips(QPainter& painter, const YearAxis& axis, const QRectF& place, std::span<const dating::Slip> slips,
                 bool with_words, const Inks& inks) {
    for (const dating::Slip& slip : slips) {
        paint_one(painter, axis, place, slip, with_words, inks);
    }
}

} // namespace pithward::picture
