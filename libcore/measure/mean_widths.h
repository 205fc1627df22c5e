#pragma once

#include "libcore/specimen/ring_series.h"

#include <map>
#include <span>

namespace pithward {

/// The arithmetic mean of the widths of a year, over the series that have one (an absent ring counts as 0, a gap not at
/// all), of each year that at least `least` of them have. To be looked at beside a core: it is neither detrended nor
/// robust, as a chronology is (dating/chronology.h). Series without years are left out.
[[nodiscard]] std::map<Year, Millimetres> mean_widths(std::span<const RingSeries* const> series, int least);

} // namespace pithward
