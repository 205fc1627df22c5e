#pragma once

#include "app/picture/dating/ink.h"
#include "app/picture/dating/year_axis.h"
#include "libcore/dating/segments.h"

#include <QPainter>
#include <span>

namespace pithward::picture {

/// How a series agrees with the others through time: a bar for each segment, over its middle years, as high as its
/// correlation (1: the whole of `place`). A full bar fits best as dated; an open one fits better with its years moved,
/// which stands over it with the years to add. Disagreement hangs below the line.
void paint_agreement(QPainter& painter, const YearAxis& axis, const QRectF& place,
                     std::span<const dating::Segment> segments, const Inks& inks = print_inks());

} // namespace pithward::picture
