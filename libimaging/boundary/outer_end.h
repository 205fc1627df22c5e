#pragma once

#include "libcore/specimen/wood.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/mark.h"

#include <optional>
#include <vector>

namespace pithward::boundary {

/// What lies at the bark end of a path.
struct OuterEnd {
    bool bark_seen = false;
    double column = 0.0; ///< Where the wood begins; the path's start when no bark or gap was seen.
    OuterWood judged = OuterWood::Unknown;
    double probability = 0.5; ///< That `judged` is right.
};

/// Looks for bark outside the wood: darker than the darkest latewood, or rough across the lanes. Then judges the wood
/// under it by its tone: dark like latewood means that growth had ended, light like earlywood that the ring is
/// unfinished; without bark outer wood is taken as lost. `marks` are those of the whole path; the first of them outside
/// the wood are told by their column.
[[nodiscard]] OuterEnd outer_end(const FlatStrip& strip, const std::vector<Mark>& marks);

} // namespace pithward::boundary
