#pragma once

#include "libcore/formats/field_sheet_columns.h"
#include "libcore/specimen/outcome.h"

#include <span>
#include <string>

namespace pithward::report {

/// A field sheet to be printed and filled in by pencil: A4 sideways, one core a row, rows of 9 mm, in the columns of
/// the field sheet that are noted at the tree. What is known of the cores is filled in; below it are empty rows, at
/// least five for each site, and a page of them where there is no core. Fails at more than 20,000 cores.
[[nodiscard]] Outcome<std::string> field_form(std::span<const formats::SheetRow> cores);

} // namespace pithward::report
