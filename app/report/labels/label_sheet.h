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
/// "SITE/CORE" (code_picture.h). Fails where there is no core, or more than 20,000.
[[nodiscard]] Outcome<LabelSheet> label_sheet(std::span<const formats::SheetRow> cores);

} // namespace pithward::report
