#pragma once

#include "libcore/pith/growth.h"

#include <cstddef>
#include <span>
#include <vector>

namespace pithward::pith {

/// Fewer other cores than this say nothing of a site.
inline constexpr std::size_t least_site_cores = 3;

/// What the cores of a site tell of growth near the pith: the mean trend of ln(width) toward the pith over the thirty
/// innermost widths of each (least squares), how it differs between cores beyond its own standard error, the scatter of
/// single rings about it, the correlation of neighbours and the usual width (geometric mean). Each is a mean over the
/// cores in which the assumed values count as four cores more, so few cores change little. `widths_mm`: of each core,
/// innermost first, without absent rings; cores with fewer than ten widths are passed over.
[[nodiscard]] GrowthBeforehand growth_of_site(std::span<const std::vector<double>> widths_mm);

} // namespace pithward::pith
