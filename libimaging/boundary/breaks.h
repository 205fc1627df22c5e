#pragma once

#include "libimaging/boundary/flat_strip.h"

#include <vector>

namespace pithward::boundary {

/// A stretch of the path without wood, in columns of the strip.
struct Gap {
    double from = 0.0;
    double to = 0.0;
    double breadth_share = 0.0; ///< Share of the core's breadth that it crosses.
};

/// Gaps that cross the path between columns `first` and `last`: dark stretches in the lanes next to it.
[[nodiscard]] std::vector<Gap> gaps_on_path(const FlatStrip& strip, double first, double last);

/// The first list with those of the second that touch none of it, in path order.
[[nodiscard]] std::vector<Gap> together(std::vector<Gap> gaps, const std::vector<Gap>& others);

/// Columns from the strip's start to `column` less the gaps before it: places for comparing widths.
[[nodiscard]] double without_gaps(const std::vector<Gap>& gaps, double column);

} // namespace pithward::boundary
