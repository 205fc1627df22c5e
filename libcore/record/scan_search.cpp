#include "libcore/record/scan_search.h"

#include "libcore/record/scan_entry.h"

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

/// Whether a file is the scan that the project knows. One that can't be read is not called another: opening it tells
/// why.
bool is_scan(const fs::path& file, const ScanEntry& scan, Held held) {
    constexpr std::int64_t quickly_read = 100'000'000;
    std::error_code error;
    const auto bytes = static_cast<std::int64_t>(fs::file_size(file, error));
    if (error || (held == Held::Quickly && bytes == scan.bytes && bytes > quickly_read)) {
        return true;
    }
    if (bytes != scan.bytes) {
        return false;
    }
    const auto read = scan_entry(file, scan.path);
    return !read || read->sha256 == scan.sha256;
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
                             std::span<const fs::path> named, Held held) {
    const fs::path real = real_place(folder / path);
    if (!stays_inside(real.lexically_relative(real_place(folder))) && !is_named(real, named)) {
        return fail(path, "the scan is outside of the project's folder, at " + real.string(),
                    "put it into that folder if you know it; what is outside is not opened unless it is named");
    }
    std::error_code error;
    const bool there = fs::is_regular_file(real, error);
    const auto known = std::ranges::find(scans, path, &ScanEntry::path);
    const bool can_be_told = known != scans.end() && !known->sha256.empty();
    if (there && (!can_be_told || is_scan(real, *known, held))) {
        return FoundScan{real, false};
    }
    if (can_be_told) {
        if (const fs::path moved = same_scan(folder, *known); !moved.empty()) {
            return FoundScan{moved, true};
        }
    }
    if (there) {
        return fail(path, "the file in the place of this scan is another one than the project knows",
                    "put the scan back; if this one is meant, give it a name of its own and name it for its core");
    }
    return fail(path, "the scan is not there, and none of its size and checksum is in the project's folder",
                "put it back, or below that folder under any name");
}

} // namespace pithward::record
