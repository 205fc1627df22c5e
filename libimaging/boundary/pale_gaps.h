#pragma once

#include "libimaging/boundary/breaks.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/texture.h"
#include "libimaging/strip/lanes.h"

#include <vector>

namespace pithward::boundary {

/// Looks of the whole strip at a step that still shows the edge of a gap.
struct CoarseLooks {
    std::vector<ColumnLook> looks;
    int step = 1;       ///< Columns of the strip for each look.
    double px_mm = 1.0; ///< Millimetres along the path for each look.
};

[[nodiscard]] CoarseLooks coarse_looks(const Lanes& lanes, const FlatStrip& strip);

/// Gaps between columns `first` and `last` whose ground is not dark: stretches that begin and end sharply, are even
/// within and have another colour than wood of their tone nearby. In columns of the strip, in path order.
[[nodiscard]] std::vector<Gap> pale_gaps(const CoarseLooks& coarse, double first, double last);

} // namespace pithward::boundary
