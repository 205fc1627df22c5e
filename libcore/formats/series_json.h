#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/width_series.h"

#include <istream>
#include <ostream>
#include <string>
#include <vector>

namespace pithward {

/// Reads series from JSON, as `write_series_json` writes them, or as `pithward measure --json` gives them: then each
/// reading is a series, called after its scan.
[[nodiscard]] Outcome<WidthTable> read_series_json(std::istream& in);

/// Writes everything that a table of series holds: { "headers": [...], "series": [ {"id", "first_year", "last_year",
/// "step_mm", "widths_mm": [1.23, 0, null], "comments"} ] }. `first_year` is null for an undated series; its widths run
/// from the pith outward too. Widths are rounded to 0.0001 mm.
[[nodiscard]] Outcome<std::vector<std::string>> write_series_json(std::ostream& out, const WidthTable& table);

} // namespace pithward
