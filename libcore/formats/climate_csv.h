#pragma once

#include "libcore/results/monthly_climate.h"
#include "libcore/specimen/outcome.h"

#include <istream>

namespace pithward {

/// Reads a monthly climate series from a CSV with a header row, in one of two forms: a year and twelve months a row
/// (year,jan,...,dec, months by their English name, its first three letters, or their number), in any order and with
/// other columns left aside; or one month a row (year,month,value). Empty cells, NA and NaN are missing values, and so
/// are -99.9, -99.99, -999, -999.9, -999.99 and -9999 (common practice). Fails, with line and column, on what is no
/// number, on years beyond -20,000 to 20,000, months beyond 1 to 12, a month that is there twice, and on no value at
/// all.
[[nodiscard]] Outcome<results::MonthlyClimate> read_climate_csv(std::istream& in);

} // namespace pithward
