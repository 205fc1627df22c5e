#include "libcore/edit/onto_path.h"
#include "libcore/edit/path_edits.h"

namespace pithward {

Reading with_what_is_beyond(Reading reading, const Reading& read, PathEnd end, ImagePoint old_end, std::int64_t fresh) {
    if (reading.path.legs.empty() || reading.boundaries.empty()) {
        return reading;
    }
    const std::size_t leg = end == PathEnd::Bark ? 0 : reading.path.legs.size() - 1;
    const Leg& line = reading.path.legs[leg];
    const double sign = end == PathEnd::Bark ? -1.0 : 1.0;
    const Boundary& last = end == PathEnd::Bark ? reading.boundaries.front() : reading.boundaries.back();
    const BoundaryId outermost = reading.boundaries.front().id;
    const double from = std::max(sign * along_leg_px(line, old_end), sign * along_leg_px(line, last.at));
    const auto beyond = [&](ImagePoint at) {
        constexpr double apart = 2.0; // pixels: nearer than that it is the old one again
        return sign * along_leg_px(line, at) > from + apart;
    };
    int added = 0;
    const auto take = [&](auto& list, auto object) {
        object.leg = leg;
        object.id.value = fresh++;
        list.push_back(std::move(object));
    };
    for (const Boundary& boundary : read.boundaries) {
        if (beyond(boundary.at)) {
            take(reading.boundaries, boundary);
            ++added;
        }
    }
    for (const Candidate& candidate : read.not_annual) {
        if (beyond(candidate.at)) {
            take(reading.not_annual, candidate);
        }
    }
    for (const Break& stretch : read.breaks) {
        if (beyond(stretch.from) && beyond(stretch.to)) {
            take(reading.breaks, stretch);
        }
    }
    if (end == PathEnd::Bark) {
        reading.outer = read.outer;
        reading.wood_edge = read.wood_edge;
        if (reading.last_year && added > 0) {
            reading.last_year = *reading.last_year + added + absent_at(reading, outermost);
        }
    } else if (added > 0) {
        reading.pith = read.pith;
    }
    sort_along(reading.boundaries, reading.path);
    sort_along(reading.not_annual, reading.path);
    sort_along(reading.breaks, reading.path);
    return reading;
}

} // namespace pithward
