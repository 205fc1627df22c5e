#pragma once

#include "libcore/record/project_values.h"
#include "libcore/specimen/outcome.h"

#include <filesystem>
#include <span>
#include <string>

namespace pithward::record {

/// Where a scan of a project is.
struct FoundScan {
    std::filesystem::path file;
    bool moved = false; ///< Not at its path, but found by its size and checksum.
};

/// Whether a path, once its dots are followed, is a relative one that stays in its folder. Links are not looked at.
[[nodiscard]] bool stays_inside(const std::filesystem::path& relative);

/// Finds a scan below a project's folder: at its path, else by its size and checksum, as `scans` tell them, in that
/// folder and the ones below it, of which at most 100,000 files are looked at. Nothing outside is opened: a path or a
/// link that leads there is a fault that tells where it leads.
[[nodiscard]] Outcome<FoundScan> find_scan(const std::filesystem::path& folder, const std::string& path,
                                           std::span<const ScanEntry> scans);

} // namespace pithward::record
