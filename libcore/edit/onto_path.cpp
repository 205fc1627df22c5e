#include "libcore/edit/onto_path.h"

#include <cmath>

namespace pithward {

double line_reach_px(const Reading& reading) {
    constexpr double at_least = 200.0;
    double longest = at_least;
    for (const Boundary& boundary : reading.boundaries) {
        if (boundary.curve.size() > 1) {
            const ImagePoint way = boundary.curve.back() - boundary.curve.front();
            longest = std::max(longest, std::hypot(way.x, way.y));
        }
    }
    return longest;
}

ImagePoint OntoPath::foot(std::size_t leg, ImagePoint of) const {
    const auto& points = path_.legs[leg].points;
    return BoundaryLine({points.begin(), points.end()}, points.front(), 0.0, 0.0).foot(of).at;
}

void OntoPath::put(Break& stretch, std::size_t leg) const {
    stretch.leg = leg;
    stretch.from = foot(leg, stretch.from);
    stretch.to = foot(leg, stretch.to);
}

void OntoPath::put(Finding& finding, std::size_t leg) const {
    finding.leg = leg;
    finding.at = foot(leg, finding.at);
    if (finding.to) {
        finding.to = foot(leg, *finding.to);
    }
}

int absent_at(const Reading& reading, BoundaryId id) {
    return static_cast<int>(std::ranges::count(reading.absent_rings, id, &AbsentRing::at));
}

} // namespace pithward
