#pragma once

#include "libcore/pith/pith_posterior.h"
#include "libcore/pith/published.h"

namespace pithward::pith {

/// Whether the pith lies on the core: more likely than not by its place, or where the path goes on by the better part
/// of a ring of `width_mm` without another boundary and ends at a distance that the curves allow.
[[nodiscard]] bool on_core(const InnerArcs& inner, const PithPosterior& posterior, const DistanceRange& ours,
                           double width_mm);

} // namespace pithward::pith
