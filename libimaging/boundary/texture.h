#pragma once

#include "libimaging/boundary/flat_strip.h"
#include "libimaging/strip/lanes.h"

#include <vector>

namespace pithward::boundary {

/// What a column of the strip looks like, from the middle lanes along the rings.
struct ColumnLook {
    double tone = 0.0;  ///< Median of the logarithm of brightness.
    double red = 0.0;   ///< ln(red / green).
    double blue = 0.0;  ///< ln(blue / green).
    double rough = 0.0; ///< Logarithm of the robust spread of tone across the lanes.
    double solid = 1.0; ///< Share of lanes that are wood.
};

/// Looks of the first `columns` columns. Outside column `held` the rings' flow is that at `held`: bark has none of its
/// own.
[[nodiscard]] std::vector<ColumnLook> looks_of(const Lanes& lanes, const FlatStrip& strip, int columns, int held);

} // namespace pithward::boundary
