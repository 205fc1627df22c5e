#pragma once

#include "app/report/package/package_files.h"

namespace pithward::report {

/// A zip of the files in a folder of the given name. The same files give the same bytes: all bear one date.
[[nodiscard]] Outcome<std::string> zip_bytes(const std::string& folder, const std::vector<PackageFile>& files);

} // namespace pithward::report
