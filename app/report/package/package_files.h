#pragma once

#include "libcore/specimen/outcome.h"

#include <filesystem>
#include <string>
#include <vector>

namespace pithward::report {

/// A file of a package. Its name has no folder in it.
struct PackageFile {
    std::string name;
    std::string bytes;
};

/// The name of the file that lists the others with their SHA-256, in the form that sha256sum -c reads.
inline constexpr const char* checksums_name = "SHA256SUMS";

/// The same files and their checksums last.
[[nodiscard]] std::vector<PackageFile> with_checksums(std::vector<PackageFile> files);

/// Told before the work, not after it. What is there is replaced with `force` only, and a folder then only where it is
/// empty or a package that holds nothing but its own files.
[[nodiscard]] Outcome<void> check_package_place(const std::filesystem::path& out, bool force);

/// Writes a package whole or not at all: as a zip, in a folder named after it, where `out` ends in .zip; else as a
/// folder.
[[nodiscard]] Outcome<void> write_package(const std::filesystem::path& out, const std::vector<PackageFile>& files,
                                          bool force);

} // namespace pithward::report
