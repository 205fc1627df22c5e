#pragma once

#include "libcore/record/connection.h"
#include "libcore/record/project_values.h"
#include "libcore/specimen/site.h"

#include <span>
#include <vector>

namespace pithward::record {

/// Writes sites with their trees and cores into empty tables.
[[nodiscard]] Outcome<void> write_sites(const Connection& connection, std::span<const Site> sites);

/// Writes what a person changed of the field data of a core, of its tree and its site; identifiers and the columns that
/// are not known stay. Fails where somebody else has changed the same meanwhile.
[[nodiscard]] Outcome<void> update_details(const Connection& connection, const CoreEntry& before,
                                           const CoreEntry& after);

/// Cores in the order of the field sheet, each with its tree and site.
[[nodiscard]] Outcome<std::vector<CoreEntry>> read_cores(const Connection& connection);

} // namespace pithward::record
