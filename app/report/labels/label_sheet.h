#pragma once

#include "libcore/formats/field_sheet_columns.h"
#include "libcore/specimen/outcome.h"

#include <span>
#include <string>
#include <vector>

namespace pithward::report {

struct LabelSheet {
    std::string pdf;
    std::vector<Fault> without_code; ///< Cores whose label has no code, and why not.
};

/// Labels for straws and mounts, 3 by 8 on a page of A4 (70 mm by 37.1 mm each), one for each core in their order: the
/// core's identifier large, its site, tree, species and date of coring where they are known, and a code that holds
/// "SITE/CORE" (code_picture.h). `from_label`: where on the first page the first one is printed, from 1, counted row by
/// row, for a sheet of which some are used. Fails where there is no core, or more than 20,000, and on a label that no
/// page has.
[[nodiscard]] Outcome<LabelSheet> label_sheet(std::span<const formats::SheetRow> cores, std::size_t from_label = 1);

inline constexpr std::size_t labels_a_page = 24;

} // namespace pithward::report
