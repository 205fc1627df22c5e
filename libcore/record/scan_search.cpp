#include "libcore/record/scan_search.h"

#include "libcore/record/project.h"

#include <algorithm>

namespace pithward::record {

namespace fs = std::filesystem;

namespace {

constexpr int most_files_looked_at = 100'000;

/// The file of this size and checksum; an empty path where there is none.
fs::path same_scan(const fs::path& folder, const ScanEntry& scan) {
    std::error_code error;
    int seen = 0;
    const auto denied = fs::directory_options::skip_permission_denied;
    for (fs::recursive_directory_iterator entry(folder, denied, error), end; !error && entry != end;
         entry.increment(error)) {
        std::error_code unknown;
        if (++seen > most_files_looked_at) {
            break;
        }
        const bool candidate = !entry->is_symlink(unknown) && entry->is_regular_file(unknown) &&
                               static_cast<std::int64_t>(entry->file_size(unknown)) == scan.bytes;
        if (!candidate) {
            continue;
        }
        const auto read = scan_entry(entry->path(), scan.path);
        if (read && read->sha256 == scan.sha256) {
            return entry->path();
        }
    }
    return {};
}

} // namespace

bool stays_inside(const fs::path& relative) {
    const auto plain = relative.lexically_normal();
    return !plain.empty() && plain.is_relative() && *plain.begin() != "..";
}

fs::path real_place(const fs::path& path) {
    std::error_code error;
    const fs::path real = fs::weakly_canonical(fs::absolute(path, error), error);
    return error ? path.lexically_normal() : real;
}

std::optional<fs::path> place_outside(const fs::path& folder, const std::string& path) {
    fs::path real = real_place(folder / path);
    return stays_inside(real.lexically_relative(real_place(folder))) ? std::nullopt : std::optional(std::move(real));
}

bool is_named(const fs::path& place, std::span<const fs::path> named) {
    return std::ranges::any_of(
        named, [&](const fs::path& one) { return place == one || stays_inside(place.lexically_relative(one)); });
}

Outcome<FoundScan> find_scan(const fs::path& folder, const std::string& path, std::span<const ScanEntry> scans,
                             std::span<const fs::path> named) {
    const fs::path real = real_place(folder / path);
    if (!stays_inside(real.lexically_relative(real_place(folder))) && !is_named(real, named)) {
        return fail(path, "the scan is outside of the project's folder, at " + real.string(),
                    "put it into that folder if you know it; what is outside is not opened unless it is named");
    }
    std::error_code error;
    if (fs::is_regular_file(real, error)) {
        return FoundScan{real, false};
    }
    const auto known = std::ranges::find(scans, path, &ScanEntry::path);
    if (known != scans.end() && !known->sha256.empty()) {
        if (const fs::path moved = same_scan(folder, *known); !moved.empty()) {
            return FoundScan{moved, true};
        }
    }
    return fail(path, "the scan is not there, and none of its size and checksum is in the project's folder",
                "put it back, or below that folder under any name");
}

} // namespace pithward::record
