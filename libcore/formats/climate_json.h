#pragma once

#include "libcore/results/climate_response.h"
#include "libcore/specimen/outcome.h"

#include <ostream>
#include <string>
#include <vector>

namespace pithward {

/// Writes what `pithward climate --json` gives: { "windows": [ {"months", "first_month", "last_month", "detrended",
/// "years", "r", "low", "high"} ], "strongest": {...} or null, "tried", "chance", "running": [ {"from", "to", "years",
/// "r", "low", "high"} ], "block_years", "draws", "remarks": [...] }, null where nothing is known. Months count from
/// January of the year before the ring's, which is 1, to December of the year after, which is 36.
[[nodiscard]] Outcome<void> write_climate_json(std::ostream& out, const results::ClimateResponse& response,
                                               const std::vector<std::string>& remarks);

} // namespace pithward
