#pragma once

#include "app/picture/marks_layer.h"

namespace pithward::picture {

/// What belongs to the path of the core that is worked on, beside its line and its ends.

/// A short tick across the path at each of its bends, where it can be taken and moved.
void paint_bends(QPainter& painter, const Reading& reading, const std::string& scan, const ViewTransform& view,
                 const MarksStyle& style);

/// Where an end of the path is out of sight, its name and the way to it, beside the last bit of the path in sight: so
/// it is always seen which way the bark is.
void paint_ways_to_ends(QPainter& painter, const MeasuredCore& core, const std::string& scan, const ViewTransform& view,
                        const QRectF& room, const MarksStyle& style);

} // namespace pithward::picture
