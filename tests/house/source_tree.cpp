#include "tests/house/source_tree.h"

#include <algorithm>
#include <fstream>
#include <functional>
#include <regex>

namespace pithward::house {

namespace {

std::vector<std::string> files_that(const std::vector<std::string>& folders,
                                    const std::function<bool(const std::filesystem::path&)>& wanted) {
    std::vector<std::string> files;
    for (const std::string& folder : folders) {
        for (const auto& entry : std::filesystem::recursive_directory_iterator(top() / folder)) {
            if (entry.is_regular_file() && wanted(entry.path())) {
                files.push_back(entry.path().lexically_relative(top()).generic_string());
            }
        }
    }
    std::ranges::sort(files);
    return files;
}

} // namespace

const std::filesystem::path& top() {
    static const std::filesystem::path folder = PITHWARD_TOP;
    return folder;
}

std::vector<std::string> source_files(const std::vector<std::string>& folders) {
    return files_that(folders, [](const auto& file) { return file.extension() == ".h" || file.extension() == ".cpp"; });
}

std::vector<std::string> named_files(const std::vector<std::string>& folders, const std::string& name) {
    return files_that(folders, [&](const auto& file) { return file.filename() == name; });
}

std::vector<std::string> lines_of(const std::string& file) {
    std::ifstream in(top() / file);
    std::vector<std::string> lines;
    for (std::string line; std::getline(in, line);) {
        lines.push_back(line);
    }
    return lines;
}

std::vector<Include> includes_in(const std::vector<std::string>& lines) {
    static const std::regex form(R"(^\s*#\s*include\s*([<"])([^>"]+)[>"].*)");
    std::vector<Include> includes;
    int number = 0;
    for (const std::string& line : lines) {
        ++number;
        if (std::smatch match; std::regex_match(line, match, form)) {
            includes.push_back({match[2], match[1] == "\"", number});
        }
    }
    return includes;
}

} // namespace pithward::house
