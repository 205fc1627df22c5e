#pragma once

#include "libcore/dating/chronology.h"
#include "libcore/specimen/outcome.h"

#include <filesystem>
#include <ostream>
#include <span>
#include <string>

namespace pithward {

/// A format for site chronologies. A new one is a writer and one line in the list of chronology_files.cpp.
struct ChronologyFormat {
    const char* extension; ///< With its point, in lower case.
    const char* name;
    Outcome<void> (*write)(std::ostream& out, const dating::Chronology& chronology, const std::string& identifier);
};

[[nodiscard]] std::span<const ChronologyFormat> chronology_formats();

/// Years down: year,value,low,high,series,trees.
[[nodiscard]] Outcome<void> write_chronology_csv(std::ostream& out, const dating::Chronology& chronology,
                                                 const std::string& identifier);

/// The decadal chronology form: six characters of identifier, four of year, ten times four of value (in thousandths)
/// and three of the number of series; 9990 and 0 where there is none. Refuses what doesn't fit: values under 0 or over
/// 9.989, years of more than four characters. More than 999 series are written as 999.
[[nodiscard]] Outcome<void> write_chronology_decadal(std::ostream& out, const dating::Chronology& chronology,
                                                     const std::string& identifier);

/// All of it: years, what the site has in common over all years and in windows, pointer years, remarks.
[[nodiscard]] Outcome<void> write_chronology_json(std::ostream& out, const dating::Chronology& chronology,
                                                  const std::string& identifier);

/// The format of a file by its ending.
[[nodiscard]] Outcome<const ChronologyFormat*> chronology_format_of(const std::filesystem::path& file);

/// Writes a file whole or not at all, in the format of its ending; the identifier is the file's name without it.
[[nodiscard]] Outcome<void> write_chronology_file(const std::filesystem::path& file, bool force,
                                                  const dating::Chronology& chronology);

} // namespace pithward
