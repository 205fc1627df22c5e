#pragma once

#include "libcore/specimen/units.h"
#include "libimaging/strip/kept_pieces.h"
#include "libimaging/strip/straighten.h"
#include "libimaging/strip/strip_geometry.h"

#include <vector>

namespace pithward::strip {

/// Where one column of the strip runs on the scan: its middle, and the step from one row to the next.
struct Sweep {
    ImagePoint middle;
    ImagePoint step;

    [[nodiscard]] ImagePoint at(double rows_from_middle) const { return middle + step * rows_from_middle; }
};

/// The sweeps of columns `from` to `to` (exclusive).
[[nodiscard]] std::vector<Sweep> sweeps_of(const StripGeometry& geometry, const StripGrid& grid, int from, int to);

/// What the lanes over these sweeps are known by, `rows` rows in all and `rows_per_lane` in each lane.
[[nodiscard]] PieceKey key_of(const std::vector<Sweep>& sweeps, int rows, int rows_per_lane);

} // namespace pithward::strip
