#pragma once

#include "libcore/record/project_values.h"

#include <filesystem>
#include <set>
#include <span>
#include <string>

namespace pithward::record {

/// The names of scans whose files are at their places in the project's folder; those that lead outside count as there,
/// since nobody looks there unasked. No file is read.
[[nodiscard]] std::set<std::string> scans_in_place(const std::filesystem::path& folder,
                                                   std::span<const CoreEntry> cores);

} // namespace pithward::record
