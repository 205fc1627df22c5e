#pragma once

#include "libcore/specimen/site.h"

#include <optional>
#include <string>

namespace pithward::bench {

/// What the field sheet says of the core on a scan.
struct FieldData {
    std::string sheet; ///< Its file name.
    Site site;         ///< Without its trees.
    Tree tree;         ///< Without its cores.
    Core core;
    friend bool operator==(const FieldData&, const FieldData&) = default;
};

/// Looks for a field sheet beside a scan, and in it for the core that names this scan or is named as the scan is.
/// Nothing where there is none; what is no field sheet is passed over.
[[nodiscard]] std::optional<FieldData> field_data_for(const std::string& scan_path);

} // namespace pithward::bench
