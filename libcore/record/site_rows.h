#pragma once

#include "libcore/record/connection.h"
#include "libcore/record/project_values.h"
#include "libcore/specimen/site.h"

#include <span>
#include <vector>

namespace pithward::record {

/// Writes sites with their trees and cores into empty tables.
[[nodiscard]] Outcome<void> write_sites(const Connection& connection, std::span<const Site> sites);

/// Cores in the order of the field sheet, each with its tree and site.
[[nodiscard]] Outcome<std::vector<CoreEntry>> read_cores(const Connection& connection);

} // namespace pithward::record
