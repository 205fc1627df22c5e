#pragma once

#include "libcore/pith/growth.h"
#include "libcore/pith/pith_posterior.h"

#include <span>

namespace pithward::pith {

/// A number of rings with its 90 % interval, both ends included.
struct RingCount {
    int rings = 0;
    int low = 0;
    int high = 0;
};

/// Rings between the innermost boundary and the pith, the one that this boundary closes included, so at least 1.
///
/// The logarithm of the width is a level and a trend over the innermost measured rings (least squares; a ring weighs
/// 1/e of one that lies ten rings further in) with what is known beforehand; the trend runs out over about ten rings,
/// and as many bring growth back toward the usual. Rings are laid from the boundary inward, with a scatter that the
/// measured ones tell, until they fill a distance drawn from the posterior; 4000 times, with the same random numbers
/// each time. The number is the median, the interval the one of whole numbers whose share of the drawn ones is nearest
/// to 90 %. `widths_mm`: positive, innermost first; there must be one.
[[nodiscard]] RingCount rings_to_pith(const PithPosterior& pith, std::span<const double> widths_mm,
                                      const GrowthBeforehand& growth = {});

/// A distance in rings of the mean width of the innermost five, rounded, at least 1: what published methods do.
[[nodiscard]] int rings_of_mean_width(double distance_mm, std::span<const double> widths_mm);

} // namespace pithward::pith
