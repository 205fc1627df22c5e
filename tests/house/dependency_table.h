#pragma once

#include "tests/house/source_tree.h"

#include <optional>
#include <string>

namespace pithward::house {

/// Why a file (a path from the top) may not have this include, by the table of what each folder may use; nothing if it
/// may.
[[nodiscard]] std::optional<std::string> objection(const std::string& file, const Include& include);

} // namespace pithward::house
