#include "app/bench/scan_view/cursor_chip.h"

#include <QFontMetricsF>

namespace pithward::bench {

void paint_cursor_chip(QPainter& painter, QPointF cursor, const QString& text, const QPalette& palette,
                       const QRectF& room) {
    if (text.isEmpty()) {
        return;
    }
    constexpr double off = 18.0;
    constexpr double across = 8.0;
    constexpr double down = 5.0;
    const QFontMetricsF metrics(painter.font());
    QRectF words = metrics.boundingRect(QRectF(0, 0, 400, 200), Qt::AlignLeft | Qt::AlignTop, text);
    QRectF chip = words.adjusted(-across, -down, across, down);
    chip.moveTopLeft(cursor + QPointF(off, off));
    if (chip.right() > room.right()) {
        chip.moveRight(cursor.x() - off);
    }
    if (chip.bottom() > room.bottom()) {
        chip.moveBottom(cursor.y() - off);
    }
    words.moveTopLeft(chip.topLeft() + QPointF(across, down));
    QColor ground = palette.color(QPalette::Window);
    ground.setAlpha(232);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(palette.color(QPalette::Mid));
    painter.setBrush(ground);
    painter.drawRoundedRect(chip, 4.0, 4.0);
    painter.setPen(palette.color(QPalette::WindowText));
    painter.drawText(words, Qt::AlignLeft | Qt::AlignTop, text);
}

} // namespace pithward::bench
