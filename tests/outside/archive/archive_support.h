#pragma once

#include "libcore/specimen/width_series.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace pithward::test {

/// Widths by year, as text has them; no gaps.
using YearWidths = std::map<int, double>;

/// The folder of archive files: where PITHWARD_ARCHIVE points, else beside the project.
[[nodiscard]] std::filesystem::path archive_folder();

/// The decadal files of one of its folders, in order of their names.
[[nodiscard]] std::vector<std::filesystem::path> decadal_files(const std::string& folder);

/// The bank's own template of the same study.
[[nodiscard]] std::filesystem::path twin_of(const std::filesystem::path& decadal_file);

/// The table of a template file, read with nothing of ours: by column name without "_raw".
[[nodiscard]] std::map<std::string, YearWidths> plain_table(const std::filesystem::path& template_file);

/// The widths of a series, gaps left out.
[[nodiscard]] YearWidths year_widths(const WidthSeries& series);

} // namespace pithward::test
