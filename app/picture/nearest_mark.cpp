#include "app/picture/nearest_mark.h"

#include "app/picture/polyline.h"
#include "libcore/edit/path_order.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pithward::picture {

namespace {

QPolygonF polygon_of(const std::vector<ImagePoint>& points) {
    QPolygonF line;
    line.reserve(static_cast<qsizetype>(points.size()));
    for (const ImagePoint& point : points) {
        line << QPointF(point.x, point.y);
    }
    return line;
}

/// The traced curve, else a straight line across the wood.
QPolygonF line_across(const std::vector<ImagePoint>& curve, ImagePoint at, double tangent, double half) {
    if (curve.size() > 1) {
        return polygon_of(curve);
    }
    const ImagePoint reach{half * std::cos(tangent), half * std::sin(tangent)};
    return polygon_of({at - reach, at + reach});
}

bool lies_on(const Reading& reading, std::size_t leg, const std::string& scan) {
    return leg < reading.path.legs.size() && reading.path.legs[leg].scan == scan;
}

double apart(ImagePoint a, ImagePoint b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

/// The boundary or candidate whose line passes nearest to a place, within `reach_px`.
template <typename Line>
const Line* nearest_line(const std::vector<Line>& lines, const MeasuredCore& core, const std::string& scan,
                         ImagePoint at, double reach_px) {
    const Line* nearest = nullptr;
    for (const Line& line : lines) {
        // A line is no longer than the core is broad, so what is far off can't be near.
        if (!lies_on(core.reading, line.leg, scan) || apart(line.at, at) > 2.5 * core.half_breadth_px + reach_px) {
            continue;
        }
        const QPolygonF drawn = line_across(line.curve, line.at, line.tangent, core.half_breadth_px);
        const double distance = foot_of(drawn, {at.x, at.y}).distance;
        if (distance <= reach_px) {
            reach_px = distance;
            nearest = &line;
        }
    }
    return nearest;
}

} // namespace

std::optional<NearBoundary> nearest_boundary(const MeasuredCore& core, const std::string& scan, ImagePoint at,
                                             double reach_px) {
    constexpr double end_share = 0.6; // of the way from the path to the end of the line
    const Boundary* nearest = nearest_line(core.reading.boundaries, core, scan, at, reach_px);
    if (nearest == nullptr) {
        return std::nullopt;
    }
    return NearBoundary{nearest->id, apart(nearest->at, at) > end_share * core.half_breadth_px};
}

std::optional<CandidateId> nearest_candidate(const MeasuredCore& core, const std::string& scan, ImagePoint at,
                                             double reach_px) {
    const Candidate* nearest = nearest_line(core.reading.not_annual, core, scan, at, reach_px);
    return nearest != nullptr ? std::optional(nearest->id) : std::nullopt;
}

std::optional<BreakId> nearest_break(const MeasuredCore& core, const std::string& scan, ImagePoint at,
                                     double reach_px) {
    const auto foot = foot_on_path(core.reading, scan, at, core.half_breadth_px + reach_px);
    if (!foot) {
        return std::nullopt;
    }
    const Leg& leg = core.reading.path.legs[foot->leg];
    const double here = along_leg_px(leg, foot->at);
    for (const Break& stretch : core.reading.breaks) {
        if (stretch.leg == foot->leg && here >= along_leg_px(leg, stretch.from) - reach_px &&
            here <= along_leg_px(leg, stretch.to) + reach_px) {
            return stretch.id;
        }
    }
    return std::nullopt;
}

std::optional<PathFoot> foot_on_path(const Reading& reading, const std::string& scan, ImagePoint at, double reach_px) {
    std::optional<PathFoot> nearest;
    for (std::size_t i = 0; i < reading.path.legs.size(); ++i) {
        const Leg& leg = reading.path.legs[i];
        if (leg.scan != scan || leg.points.size() < 2) {
            continue;
        }
        const Foot foot = foot_of(polygon_of(leg.points), {at.x, at.y});
        if (foot.distance <= reach_px) {
            reach_px = foot.distance;
            const QPointF square = upward_normal(foot.direction);
            nearest = PathFoot{i, {foot.at.x(), foot.at.y()}, line_direction({0, 0}, {square.x(), square.y()})};
        }
    }
    return nearest;
}

double line_direction(ImagePoint from, ImagePoint to) {
    const double angle = std::atan2(to.y - from.y, to.x - from.x);
    const double turned = angle < 0.0 ? angle + std::numbers::pi : angle;
    return turned >= std::numbers::pi ? 0.0 : turned;
}

const Boundary* boundary_of(const Reading& reading, BoundaryId id) {
    const auto found = std::ranges::find(reading.boundaries, id, &Boundary::id);
    return found == reading.boundaries.end() ? nullptr : &*found;
}

} // namespace pithward::picture
