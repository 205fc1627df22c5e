#pragma once

#include "libcore/record/project_values.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/work.h"

#include <filesystem>
#include <span>
#include <string>
#include <vector>

namespace pithward::record {

/// The size and checksum of a scan, which is read from end to end. `path` is taken as it is. Fails where the file can't
/// be read, or where the work was stopped.
[[nodiscard]] Outcome<ScanEntry> scan_entry(const std::filesystem::path& file, std::string path, const Work& work = {});

/// A scan on the disk, and what a project calls it.
struct ScanToSum {
    std::filesystem::path file;
    std::string path;
};

/// The same of several, in their order, shared out among the threads of `work`. Fails with the first that does.
[[nodiscard]] Outcome<std::vector<ScanEntry>> scan_entries(std::span<const ScanToSum> files, const Work& work);

} // namespace pithward::record
