#pragma once

#include "libcore/specimen/outcome.h"

#include <CLI/CLI.hpp>

#include <filesystem>
#include <string>
#include <vector>

namespace pithward::batch {

// A project may be a stranger's: what lies outside of its folder is read only where the user has named it.

/// `--outside DIR`, which may stand several times.
void add_outside_option(CLI::App& parser, std::vector<std::string>& folders);

/// The folders' real places. Fails on what is no folder.
[[nodiscard]] Outcome<std::vector<std::filesystem::path>> outside_folders(const std::vector<std::string>& folders);

/// The refusal of what a path of a project leads to outside, with how to allow it.
[[nodiscard]] Fault not_named(const std::string& path, const std::filesystem::path& place);

} // namespace pithward::batch
