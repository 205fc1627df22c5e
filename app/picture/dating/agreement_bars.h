#pragma once

#include "app/picture/dating/ink.h"
#include "app/picture/dating/year_axis.h"
#include "libcore/dating/segments.h"

#include <QPainter>
#include <span>

namespace pithward::picture {

/// Whether a segment fits clearly better at other years: by chance alone so well in under 1 case in 100 (ours).
[[nodiscard]] bool fits_elsewhere(const dating::Segment& segment);

/// How a series agrees with the others through time: a bar for each segment, over its middle years, as high as its
/// correlation (1: the whole of `place`). A full bar fits best as dated. An open one with a number over it fits better
/// with so many years added, and by chance so well in under 1 case in 100; a faint open one fits somewhere else, but no
/// better than by chance. Disagreement hangs below the line.
void paint_agreement(QPainter& painter, const YearAxis& axis, const QRectF& place,
                     std::span<const dating::Segment> segments, const Inks& inks = print_inks());

} // namespace pithward::picture
