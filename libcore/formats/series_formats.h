#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/width_series.h"

#include <filesystem>
#include <istream>
#include <ostream>
#include <span>
#include <string>
#include <vector>

namespace pithward {

/// A format for tables of series. A new one is one file and one line in the list of series_formats.cpp.
struct SeriesFormat {
    const char* extension; ///< With its point, in lower case.
    const char* name;
    Outcome<WidthTable> (*read)(std::istream& in);
    /// Answers with remarks: what a person should know of what was written.
    Outcome<std::vector<std::string>> (*write)(std::ostream& out, const WidthTable& table);
};

[[nodiscard]] std::span<const SeriesFormat> series_formats();

/// The format of a file by its extension, in upper or lower case.
[[nodiscard]] Outcome<const SeriesFormat*> series_format_of(const std::filesystem::path& file);

/// Reads a file in the format that its extension names. Faults name the file.
[[nodiscard]] Outcome<WidthTable> read_series_file(const std::filesystem::path& file);

/// Writes a file whole or not at all, in the format that its extension names. Answers with remarks.
[[nodiscard]] Outcome<std::vector<std::string>> write_series_file(const std::filesystem::path& file, bool force,
                                                                  const WidthTable& table);

} // namespace pithward
