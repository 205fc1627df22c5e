#pragma once

#include "libcore/specimen/site.h"

#include <optional>

namespace pithward {

/// The year of a core's outermost complete ring, from the day of coring and what was seen under the bark. A ring bears
/// the year in which its growth began (design, section 4).
///
/// Nothing where that can't be told: outer wood lost or unknown, no latitude, or no month where it matters. North of
/// the equator growth is taken to end by July and to begin after April, south of it half a year later (common practice
/// for temperate woods; assumed).
[[nodiscard]] std::optional<Year> outermost_year(const Core& core, std::optional<double> latitude);

} // namespace pithward
