#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace pithward::house {

/// The project's top folder.
[[nodiscard]] const std::filesystem::path& top();

/// All .h and .cpp files under these folders of the top folder, as paths from the top, sorted.
[[nodiscard]] std::vector<std::string> source_files(const std::vector<std::string>& folders);

/// All files of this name under these folders, likewise.
[[nodiscard]] std::vector<std::string> named_files(const std::vector<std::string>& folders, const std::string& name);

/// The lines of a file given as a path from the top.
[[nodiscard]] std::vector<std::string> lines_of(const std::string& file);

/// One #include line.
struct Include {
    std::string name;
    bool quoted = false; ///< "name", not <name>.
    int line = 0;        ///< From 1.
};

/// The #include lines among the lines of a file.
[[nodiscard]] std::vector<Include> includes_in(const std::vector<std::string>& lines);

} // namespace pithward::house
