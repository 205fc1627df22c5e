#pragma once

#include "libcore/specimen/outcome.h"

#include <cstdint>
#include <filesystem>
#include <optional>

namespace pithward::record {

/// Marks a project among other SQLite files, in their header ("PWrd"; chosen by us).
inline constexpr std::int64_t project_application_id = 0x50577264;
/// The version of the tables that this program writes.
inline constexpr int project_version = 1;

/// Looks at a file's first bytes, before SQLite does: a file that is not there, that is no project, that is cut, or
/// that a newer program wrote. Nothing where it may be opened. The layout of the header is SQLite's (sqlite.org,
/// "Database File Format", section 1.3).
[[nodiscard]] std::optional<Fault> fault_of_header(const std::filesystem::path& file);

/// The refusal of a file that is no project, or no longer one.
[[nodiscard]] Fault no_project(const std::filesystem::path& file);

/// The refusal of a project that a newer program wrote.
[[nodiscard]] Fault newer_than_known(const std::filesystem::path& file, std::int64_t version);

} // namespace pithward::record
