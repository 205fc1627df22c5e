#pragma once

#include "libcore/specimen/outcome.h"

#include <optional>
#include <string>

namespace pithward::scan {

/// Why there is no file to be read at a path: missing, a folder, not permitted, empty. Nothing where there is one.
[[nodiscard]] std::optional<Fault> fault_of_file(const std::string& path);

} // namespace pithward::scan
