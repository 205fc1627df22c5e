#include "libcore/edit/path_edits.h"

#include "libcore/edit/apply.h"
#include "libcore/edit/edits_between.h"
#include "libcore/edit/onto_path.h"

#include <algorithm>
#include <set>

namespace pithward {

namespace {

/// The rings outside of the boundary `kept`, when all boundaries before it go.
int rings_outside(const Reading& reading, std::size_t kept) {
    int rings = static_cast<int>(kept);
    for (std::size_t i = 1; i <= kept; ++i) {
        rings += absent_at(reading, reading.boundaries[i].id);
    }
    return rings;
}

void drop_hanging(Reading& reading) {
    std::set<BoundaryId> there;
    for (const Boundary& boundary : reading.boundaries) {
        there.insert(boundary.id);
    }
    std::erase_if(reading.absent_rings, [&](const AbsentRing& ring) { return !there.contains(ring.at); });
    std::erase_if(reading.findings,
                  [&](const Finding& finding) { return finding.boundary && !there.contains(*finding.boundary); });
}

/// Whether the boundaries of `after` stand in the order in which they stood before.
bool in_old_order(const Reading& before, const Reading& after) {
    auto old = before.boundaries.begin();
    return std::ranges::all_of(after.boundaries, [&](const Boundary& boundary) {
        old = std::find_if(old, before.boundaries.end(), [&](const Boundary& one) { return one.id == boundary.id; });
        return old != before.boundaries.end();
    });
}

} // namespace

Outcome<Reading> rerouted(Reading reading, const Path& after) {
    const Reading before = reading;
    if (after.legs.size() != reading.path.legs.size()) {
        return fail("", "the other path has more or fewer legs", "bend the legs that there are");
    }
    const OntoPath onto(after, line_reach_px(reading));
    std::erase_if(reading.boundaries, [&](Boundary& boundary) { return !onto.put(boundary, boundary.leg); });
    std::erase_if(reading.not_annual, [&](Candidate& candidate) { return !onto.put(candidate, candidate.leg); });
    if (reading.boundaries.empty() && !before.boundaries.empty()) {
        return fail("", "this path would meet none of the core's boundaries", "draw another path for the core (P)");
    }
    for (Break& stretch : reading.breaks) {
        onto.put(stretch, stretch.leg);
    }
    for (Finding& finding : reading.findings) {
        onto.put(finding, finding.leg);
    }
    reading.path = after;
    if (!before.boundaries.empty()) {
        const auto first = find_object(before.boundaries, reading.boundaries.front().id) - before.boundaries.begin();
        if (first > 0) { // the bark is not on the path any more
            reading.wood_edge.reset();
            reading.outer = OuterWood::Unknown;
            if (reading.last_year) {
                reading.last_year = *reading.last_year - rings_outside(before, static_cast<std::size_t>(first));
            }
        }
        if (reading.boundaries.back().id != before.boundaries.back().id) {
            reading.pith.reset();
        }
    }
    if (reading.wood_edge) {
        reading.wood_edge = onto.foot(0, *reading.wood_edge);
    }
    drop_hanging(reading);
    sort_along(reading.boundaries, after);
    sort_along(reading.not_annual, after);
    sort_along(reading.breaks, after);
    if (!in_old_order(before, reading)) {
        return fail("", "ring boundaries would change their order along this path",
                    "bend it less, so that it meets them one after the other");
    }
    if (auto fault = fault_of_links(reading)) {
        return tl::unexpected(std::move(*fault));
    }
    return reading;
}

Outcome<Edit> reroute(const Reading& reading, const Path& after, std::string label) {
    return rerouted(reading, after).map([&](const Reading& now) {
        return edits_between(reading, now, std::move(label));
    });
}

} // namespace pithward
