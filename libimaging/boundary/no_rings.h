#pragma once

#include "libcore/specimen/reading.h"

#include <vector>

namespace pithward::boundary {

/// True when what was found along a path can be found on any surface: few boundaries for its length, or none that is
/// sure.
[[nodiscard]] bool has_no_rings(const std::vector<Boundary>& boundaries, double path_mm);

} // namespace pithward::boundary
