#pragma once

#include "libcore/record/connection.h"

#include <span>
#include <vector>

namespace pithward::record {

/// What brings the tables from one version to the next, as statements of portable SQL.
using MigrationStep = std::span<const char* const>;

/// Step i leads from version i to version i + 1. A new version is one list here, one more in `project_version`, and one
/// file of the version before among the tests' fixtures.
[[nodiscard]] std::span<const MigrationStep> migration_steps();

/// Brings a project up to the last of the steps, each in one transaction with its version number, so that being killed
/// leaves the old version or the new one. A project that has been worked with is copied first, beside the old one; the
/// copy stays. Does nothing to one that is up to date.
[[nodiscard]] Outcome<void> migrate(Connection& connection, std::span<const MigrationStep> steps);

/// Fails where the tables are not those of a project of this version: other ones, views or triggers, which a stranger's
/// file might bring.
[[nodiscard]] Outcome<void> check_tables(const Connection& connection);

} // namespace pithward::record
