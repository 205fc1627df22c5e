#pragma once

#include "app/bench/tools/pith_shape.h"
#include "app/picture/marks_layer.h"
#include "app/picture/view_transform.h"

namespace pithward::bench {

/// Paints the pith of the core that is worked on: the estimated inner rings as sparse arcs, the 90 % interval of the
/// centre as a bar with a tick at each end, handles on the arc of the innermost boundary, and a word beyond it all. The
/// wood stays bare.
void paint_pith_shape(QPainter& painter, const PithShape& shape, const QString& word,
                      const picture::ViewTransform& view, const picture::MarksStyle& style);

/// Paints a centre that is being dragged, with the circles about it.
void paint_pith_preview(QPainter& painter, const std::vector<std::vector<ImagePoint>>& circles, ImagePoint centre,
                        const picture::ViewTransform& view, const picture::MarksStyle& style);

} // namespace pithward::bench
