#pragma once

#include "libcore/record/project_values.h"
#include "libcore/specimen/outcome.h"

#include <filesystem>
#include <optional>
#include <span>
#include <string>

namespace pithward::record {

/// Where a scan of a project is.
struct FoundScan {
    std::filesystem::path file;
    bool moved = false; ///< Not at its path, but found by its size and checksum.
};

/// How surely a scan is the one that the project knows: by size and checksum, or, with Quickly, that of a file of more
/// than 100 MB by its size alone, since its checksum takes longer than its first view.
enum class Held { Surely, Quickly };

/// Whether a path, once its dots are followed, is a relative one that stays in its folder. Links are not looked at.
[[nodiscard]] bool stays_inside(const std::filesystem::path& relative);

/// Where a path of a project leads to once dots and links are followed.
[[nodiscard]] std::filesystem::path real_place(const std::filesystem::path& path);

/// The same where it is outside of the project's folder; nothing where it is in there.
[[nodiscard]] std::optional<std::filesystem::path> place_outside(const std::filesystem::path& folder,
                                                                 const std::string& path);

/// Whether a place is one of those named, or lies in one; all of them real places.
[[nodiscard]] bool is_named(const std::filesystem::path& place, std::span<const std::filesystem::path> named);

/// Finds a scan below a project's folder: at its path, else by its size and checksum, as `scans` tell them, in that
/// folder and the ones below it, of which at most 100,000 files are looked at. Outside, only files are taken that are
/// `named` by the user or lie in a folder that is: another path or link that leads there is a fault that tells where it
/// leads. What is found is a real place: a link that is changed later leads nowhere else. Another file in the place of
/// the scan is a fault, unless the scan itself is found elsewhere.
[[nodiscard]] Outcome<FoundScan> find_scan(const std::filesystem::path& folder, const std::string& path,
                                           std::span<const ScanEntry> scans,
                                           std::span<const std::filesystem::path> named = {}, Held held = Held::Surely);

} // namespace pithward::record
