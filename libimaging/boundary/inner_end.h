#pragma once

#include "libimaging/boundary/relief.h"
#include "libimaging/strip/lanes.h"

namespace pithward::boundary {

/// Where the wood ends at or beyond the path's inner end, as a place along the path in mm: where what follows has
/// another tone or colour than the path's last centimetre, be it the mount, the shadow or the background. Beyond all
/// that is seen where no such place is.
[[nodiscard]] double inner_end_of_wood(const Lanes& lanes, double path_mm);

/// The relief with nothing solid beyond the wood's inner end. The cut across the core is a stronger edge than any ring,
/// and rings that meet it at a slant would be followed along it.
[[nodiscard]] Relief ending_with_wood(Relief relief, const Lanes& lanes, double path_mm);

} // namespace pithward::boundary
