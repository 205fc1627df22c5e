#pragma once

#include "demo-scans/maker/truth.h"
#include "libcore/specimen/reading.h"

#include <cstddef>
#include <vector>

namespace pithward::test {

/// A boundary of a reading and the true one that it shows.
struct Match {
    std::size_t boundary = 0; ///< Index into the reading's boundaries.
    std::size_t truth = 0;    ///< Index into the truth's.
    double error_px = 0.0;    ///< Along the path, positive toward the pith.
};

/// A reading against the truth.
struct Matching {
    std::vector<Match> matches;
    int visible = 0;  ///< True boundaries that can be seen.
    int found = 0;    ///< Visible ones with a boundary of the reading.
    int proposed = 0; ///< Boundaries of the reading on the true path.
    int spurious = 0; ///< Boundaries that match none, visible or not ...
    int in_bark = 0;  ///< ... and of these the ones outside the outermost true boundary.
};

/// Pairs each true boundary with the nearest one of the reading, one to one, nearest first, up to 0.06 mm or 2 pixels
/// apart along the path, whichever is more.
[[nodiscard]] Matching match(const Reading& reading, const demo::Truth& truth);

[[nodiscard]] double median(std::vector<double> values);

} // namespace pithward::test
