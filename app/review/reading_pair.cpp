#include "app/review/reading_pair.h"

#include <algorithm>

namespace pithward::bench {

namespace {

Outcome<picture::MeasuredCore> measured_reading(const record::Project& project, ReadingId id) {
    return project.reading(id).and_then([](Reading reading) { return picture::measured(std::move(reading)); });
}

} // namespace

Outcome<ReadingPair> read_pair(const record::Project& project, ReadingId first, ReadingId second) {
    auto one = measured_reading(project, first);
    auto other = one ? measured_reading(project, second) : tl::unexpected(one.error());
    if (!other) {
        return tl::unexpected(std::move(other.error()));
    }
    auto comparison = review::compare({one->reading, one->series}, {other->reading, other->series});
    if (!comparison) {
        return tl::unexpected(std::move(comparison.error()));
    }
    return ReadingPair{std::move(*one), std::move(*other), std::move(*comparison)};
}

std::vector<LoneBoundary> lone_boundaries(const ReadingPair& pair) {
    std::vector<LoneBoundary> lone;
    const auto add = [&](const picture::MeasuredCore& core, const std::vector<BoundaryId>& ids, bool in_first) {
        for (const PlacedBoundary& placed : core.series.boundaries) {
            const auto& boundaries = core.reading.boundaries;
            const auto boundary = std::ranges::find(boundaries, placed.id, &Boundary::id);
            if (std::ranges::find(ids, placed.id) != ids.end() && boundary != boundaries.end()) {
                lone.push_back({in_first, *boundary, placed});
            }
        }
    };
    add(pair.first, pair.comparison.only_first, true);
    add(pair.second, pair.comparison.only_second, false);
    return lone;
}

} // namespace pithward::bench
