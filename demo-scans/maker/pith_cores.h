#pragma once

#include "demo-scans/maker/presets.h"

namespace pithward::demo {

/// The inner end of a core that misses the pith by up to 20 mm sideways, to try estimates of the pith by: some
/// 30 mm of wood, innermost rings of 0.5 to 4 mm, growth up to 15 % eccentric, swells up to about 2 % of the radius
/// (twice their standard deviation). One in twelve has the pith on it. Three of four are conifers, the others are
/// ring-porous.
[[nodiscard]] Order pith_core(std::uint64_t seed, int number);

} // namespace pithward::demo
