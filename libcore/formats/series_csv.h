#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/width_series.h"

#include <istream>
#include <ostream>
#include <span>
#include <string>
#include <vector>

namespace pithward {

/// Reads series from a CSV: a header row, years down, series across, widths in mm. The first column is `year`, or
/// `ring` for undated series (1 at the bark), or both columns stand first. An empty cell is a gap or outside the
/// series, 0 a locally absent ring. Semicolons or tabs with decimal commas are read too. Lines before the header row
/// that begin with # are the table's headers, the first three of them.
[[nodiscard]] Outcome<WidthTable> read_series_csv(std::istream& in);

/// Writes the same, with commas and decimal points, and answers with what a person should know of it.
[[nodiscard]] Outcome<std::vector<std::string>> write_series_csv(std::ostream& out, const WidthTable& table);

/// Writes lines that say something of the table that follows: each a quoted field that begins with "# ".
void write_csv_headers(std::ostream& out, std::span<const std::string> headers);

} // namespace pithward
