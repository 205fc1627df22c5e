#pragma once

#include "app/picture/measured_core.h"
#include "libcore/record/project.h"
#include "libcore/review/comparison.h"

#include <vector>

namespace pithward::bench {

/// Two readings of one core, measured and held against each other.
struct ReadingPair {
    picture::MeasuredCore first;
    picture::MeasuredCore second;
    review::Comparison comparison;
};

/// Fails where one of them can't be measured or the two have no scan in common.
[[nodiscard]] Outcome<ReadingPair> read_pair(const record::Project& project, ReadingId first, ReadingId second);

/// A boundary that only one of the two readings has.
struct LoneBoundary {
    bool in_first = true;
    Boundary boundary;
    PlacedBoundary placed; ///< In its own reading.
};

/// All of them: the first reading's from bark to pith, then the second's.
[[nodiscard]] std::vector<LoneBoundary> lone_boundaries(const ReadingPair& pair);

} // namespace pithward::bench
