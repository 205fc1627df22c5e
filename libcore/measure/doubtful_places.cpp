#include "libcore/measure/doubtful_places.h"

#include "libcore/measure/measure.h"

#include <algorithm>
#include <cmath>

namespace pithward {

namespace {

constexpr double laid_none = 0.001;
constexpr double looked_at_and_false = 0.002;

std::string in_percent(double probability) {
    return std::to_string(std::lround(100.0 * probability)) + " %";
}

DoubtfulPlace overlooked(const Candidate& candidate, Millimetres s, Year ring) {
    return {.ring = ring,
            .too_few = true,
            .probability = candidate.confidence,
            .leg = candidate.leg,
            .at = candidate.at,
            .s = s,
            .change = ProposeBoundary{boundary_from(candidate, BoundaryId{})},
            .reason = "a weak change here may be a boundary (" + in_percent(candidate.confidence) + ")"};
}

DoubtfulPlace no_boundary(const Boundary& boundary, Millimetres s, Year ring) {
    double probability = 1.0 - boundary.confidence;
    if (boundary.confirmation == Confirmation::LookedAt || boundary.origin == Origin::Analyst) {
        probability = std::min(probability, looked_at_and_false);
    }
    return {.ring = ring,
            .too_few = false,
            .probability = probability,
            .leg = boundary.leg,
            .at = boundary.at,
            .s = s,
            .change = ProposeRemoval{boundary.id},
            .reason = "this boundary may be none (" + in_percent(probability) + ")"};
}

DoubtfulPlace none_laid(const Boundary& boundary, Millimetres s, Year ring) {
    return {.ring = ring,
            .too_few = true,
            .probability = laid_none,
            .leg = boundary.leg,
            .at = boundary.at,
            .s = s,
            .change = ProposeAbsentRing{boundary.id},
            .reason = "the tree may have laid no ring here: nothing shows it"};
}

} // namespace

Outcome<std::vector<DoubtfulPlace>> doubtful_places(const Reading& reading, const RingSeries& series) {
    std::vector<DoubtfulPlace> places;
    const auto& placed = series.boundaries;
    places.reserve(reading.not_annual.size() + 2 * placed.size());
    for (const Candidate& candidate : reading.not_annual) {
        const auto s = place_on_path(reading, candidate.leg, candidate.at);
        if (!s) {
            return tl::unexpected(s.error());
        }
        const auto inner = std::ranges::upper_bound(placed, *s, {}, &PlacedBoundary::s);
        if (inner != placed.begin() && inner != placed.end() && std::prev(inner)->year) {
            places.push_back(overlooked(candidate, *s, *std::prev(inner)->year));
        }
    }
    for (std::size_t i = 1; i < placed.size(); ++i) {
        const auto boundary = std::ranges::find(reading.boundaries, placed[i].id, &Boundary::id);
        if (placed[i - 1].year && boundary != reading.boundaries.end()) {
            places.push_back(no_boundary(*boundary, placed[i].s, *placed[i - 1].year));
            places.push_back(none_laid(*boundary, placed[i].s, *placed[i - 1].year));
        }
    }
    for (DoubtfulPlace& place : places) {
        place.scan = reading.path.legs[place.leg].scan;
    }
    return places;
}

} // namespace pithward
