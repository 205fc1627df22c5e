#pragma once

#include "libcore/specimen/wood.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/mark.h"
#include "libimaging/boundary/wood/wood_model.h"
#include "libimaging/strip/lanes.h"

#include <vector>

namespace pithward::boundary {

/// What lies at the bark end of a path.
struct OuterEnd {
    bool edge_seen = false; ///< Something that is no wood was seen outside the wood: bark, or a gap.
    double column = 0.0;    ///< Where the wood begins; the path's start when no edge was seen.
    double slope = 0.0;     ///< Movement of the edge along the path for each mm across.
    OuterWood judged = OuterWood::Unknown;
    double probability = 0.5; ///< That `judged` is right.
    /// Darkness of the wood under the edge against that behind the next boundaries: about 1 for latewood, 0 for even
    /// wood or inner bark.
    double darkness = 0.0;
};

/// Finds where the wood begins and judges the outermost ring.
///
/// What wood looks like (tone, colour and roughness across the lanes for each tone) is learnt further inside. Columns
/// that differ speak for bark; the edge is where the sum of their evidence, from the path's start on, is highest. It
/// then moves to the strongest change of colour nearby; where the model says so it is sought again by what tells bark
/// from the wood next to it (bark_or_wood.h). The wood under it is compared with the wood
/// behind the boundaries of the first rings: as dark means that growth had ended, light that the ring is unfinished.
/// Without an edge outer wood is lost.
[[nodiscard]] OuterEnd outer_end(const Lanes& lanes, const FlatStrip& strip, const std::vector<Mark>& marks,
                                 const WoodModel& model);

} // namespace pithward::boundary
