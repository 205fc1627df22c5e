#pragma once

#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <vector>

namespace pithward::pith {

/// Widths of the rings in mm, innermost first; absent rings and gaps left out, and a ring that ends at a pith that was
/// judged before.
[[nodiscard]] std::vector<double> inner_widths(const Reading& reading, const RingSeries& series);

} // namespace pithward::pith
