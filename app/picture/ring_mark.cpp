#include "app/picture/mark_shapes.h"
#include "app/picture/marks.h"
#include "app/picture/polyline.h"

#include <algorithm>

namespace pithward::picture {

std::optional<RingMark> ring_mark(const MeasuredCore& core, const std::string& scan, const ViewTransform& view,
                                  int ring_number) {
    const auto& boundaries = core.reading.boundaries;
    const auto& legs = core.reading.path.legs;
    const auto placed = std::ranges::find(core.series.boundaries, ring_number, &PlacedBoundary::ring_number);
    const auto i = static_cast<std::size_t>(placed - core.series.boundaries.begin());
    if (i >= boundaries.size() || boundaries[i].leg >= legs.size() || legs[boundaries[i].leg].scan != scan ||
        legs[boundaries[i].leg].points.empty()) {
        return std::nullopt;
    }
    const Boundary& outer = boundaries[i];
    const QPolygonF line = in_view(legs[outer.leg].points, view);
    const Foot from = foot_of(line, view.to_view(outer.at));
    RingMark mark{{boundary_mark(outer, core, view)}, {}, {}, -upward_normal(from.direction)};
    double to = length_of(line);
    if (i + 1 < boundaries.size() && boundaries[i + 1].leg == outer.leg) {
        mark.edges.push_back(boundary_mark(boundaries[i + 1], core, view));
        to = foot_of(line, view.to_view(boundaries[i + 1].at)).along;
    }
    QPolygonF stretch = piece_of(line, std::min(from.along, to), std::max(from.along, to));
    if (stretch.size() < 2) {
        return std::nullopt;
    }
    const double off = core.half_breadth_px * view.scale() + beside_wood + 2.0;
    mark.word_at = 0.5 * (stretch.front() + stretch.back()) + mark.away * (off + 14.0);
    stretch.translate(mark.away * off);
    mark.bracket = stretch;
    return mark;
}

} // namespace pithward::picture
