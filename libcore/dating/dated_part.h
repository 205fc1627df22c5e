#pragma once

#include "libcore/specimen/ring_series.h"

namespace pithward::dating {

/// The rings that have a year, where the outermost has one: beyond lost wood a series floats. A series without years
/// stays as it is.
[[nodiscard]] RingSeries dated_part(RingSeries series);

} // namespace pithward::dating
