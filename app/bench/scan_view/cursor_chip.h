#pragma once

#include <QPainter>
#include <QPalette>
#include <QRectF>
#include <QString>

namespace pithward::bench {

/// A quiet label near the cursor that says what a click will do. Keeps inside `room` and off the cursor itself.
void paint_cursor_chip(QPainter& painter, QPointF cursor, const QString& text, const QPalette& palette,
                       const QRectF& room);

} // namespace pithward::bench
