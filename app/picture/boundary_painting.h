#pragma once

#include "app/picture/marks_layer.h"

namespace pithward::picture {

/// Paints the boundaries of a core and the lettering beside them. One that a person has confirmed is stout and stands
/// on feet, a bar across either end of its line, whatever its confidence; one that nobody has confirmed has none.
void paint_boundaries(QPainter& painter, const MarkSet& marks, const MarksStyle& style);

} // namespace pithward::picture
