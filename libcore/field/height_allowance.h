#pragma once

#include "libcore/measure/age.h"
#include "libcore/specimen/site.h"

#include <optional>

namespace pithward::field {

/// The years that a tree took to grow up to the height of a core: the field sheet's columns `years_to_core_height` and
/// `years_to_core_height_sd` where the first holds a number from 0 to 500 (the second 0 where it is not told), else
/// what was given for all cores.
[[nodiscard]] std::optional<HeightAllowance> height_allowance(const Core& core,
                                                              const std::optional<HeightAllowance>& given);

} // namespace pithward::field
