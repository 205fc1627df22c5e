#pragma once

#include "libcore/progress/core_progress.h"

#include <QColor>
#include <QRectF>

class QPainter;

namespace pithward::bench {

/// Draws how far a stage is, told apart by form: an open ring, one half full, a full disc, and a triangle with a stroke
/// where something wants a look, in `warning`. `box` is square.
void paint_form(QPainter& painter, progress::HowFar how, const QRectF& box, const QColor& ink, const QColor& warning);

} // namespace pithward::bench
