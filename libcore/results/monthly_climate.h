#pragma once

#include <array>
#include <map>
#include <optional>

namespace pithward::results {

inline constexpr int months_a_year = 12;

/// A climate series: a value for each month, by calendar year. Nothing where a month has none.
using MonthlyClimate = std::map<int, std::array<std::optional<double>, months_a_year>>;

/// Which half of the earth a site is on: it decides when its growing season is.
enum class Hemisphere { North, South };

} // namespace pithward::results
