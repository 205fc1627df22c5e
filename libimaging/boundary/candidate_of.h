#pragma once

#include "libcore/specimen/boundary.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/mark.h"
#include "libimaging/strip/strip_geometry.h"

namespace pithward::boundary {

/// A mark of a strip as a candidate on the scan, of leg 0: place, direction, curve, latewood and what informs about it.
/// `probability`: that it is an annual boundary.
[[nodiscard]] Candidate candidate_of(const Mark& mark, double probability, const FlatStrip& strip,
                                     const StripGeometry& geometry);

} // namespace pithward::boundary
