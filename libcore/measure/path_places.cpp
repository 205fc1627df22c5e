#include "libcore/measure/path_places.h"

#include <algorithm>

namespace pithward {

namespace {

const Boundary* find_boundary(const Reading& reading, BoundaryId id) {
    const auto found = std::ranges::find(reading.boundaries, id, &Boundary::id);
    return found == reading.boundaries.end() ? nullptr : &*found;
}

tl::unexpected<Fault> bad_path(const std::string& what) {
    return fail("", what, "draw the path again");
}

bool is_line(const Leg& leg) {
    return leg.points.size() >= 2 &&
           !std::ranges::all_of(leg.points, [&](const ImagePoint& point) { return point == leg.points.front(); });
}

} // namespace

Outcome<PathPlaces> PathPlaces::of(const Reading& reading) {
    if (reading.path.legs.empty()) {
        return bad_path("the reading has no path");
    }
    PathPlaces places;
    for (std::size_t k = 0; k < reading.path.legs.size(); ++k) {
        const Leg& leg = reading.path.legs[k];
        const auto calibration = reading.calibrations.find(leg.scan);
        if (calibration == reading.calibrations.end()) {
            return fail(leg.scan, "the scan has no calibration", "give its resolution");
        }
        if (!is_line(leg)) {
            return bad_path("a leg of the path has fewer than two different points");
        }
        const LegLine line(leg, calibration->second);
        double offset = 0.0;
        if (k > 0) {
            double left = places.lines_.back().length_mm();
            double entered = 0.0;
            if (const auto* join = std::get_if<JoinedAtBoundary>(&leg.joined_by)) {
                const Boundary* before = find_boundary(reading, join->on_previous);
                const Boundary* here = find_boundary(reading, join->on_this);
                if (before == nullptr || here == nullptr || before->leg != k - 1 || here->leg != k) {
                    return bad_path("two legs are joined at a boundary that is not marked on both");
                }
                left = places.lines_.back().along(before->at);
                entered = line.along(here->at);
            }
            offset = places.offset_.back() + left - entered;
        }
        places.lines_.push_back(line);
        places.calibrations_.push_back(calibration->second);
        places.offset_.push_back(offset);
    }
    return places;
}

double PathPlaces::along(std::size_t leg, ImagePoint at) const {
    return offset_[leg] + lines_[leg].along(at);
}

} // namespace pithward
