#pragma once

#include "libcore/record/connection.h"
#include "libcore/record/project_values.h"

namespace pithward::record {

[[nodiscard]] Outcome<void> insert_scan(const Connection& connection, const ScanEntry& scan);
/// In the order of their paths.
[[nodiscard]] Outcome<std::vector<ScanEntry>> read_scans(const Connection& connection);

} // namespace pithward::record
