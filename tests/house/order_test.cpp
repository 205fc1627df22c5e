#include "tests/house/source_tree.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <map>
#include <memory>
#include <regex>
#include <set>
#include <sstream>

namespace pithward::house {
namespace {

constexpr std::size_t most_lines = 500;
const std::vector<std::string> source_folders{"libcore", "libimaging", "app", "demo-scans", "tests"};

/// All files that a CMakeLists.txt names, as paths from the top.
std::set<std::string> built_files() {
    static const std::string from_top = "${CMAKE_SOURCE_DIR}/";
    std::set<std::string> files;
    for (const std::string& list : named_files(source_folders, "CMakeLists.txt")) {
        const auto folder = std::filesystem::path(list).parent_path();
        for (std::string line : lines_of(list)) {
            std::ranges::replace_if(
                line, [](char c) { return c == '(' || c == ')'; }, ' ');
            std::istringstream in(line);
            for (std::string word; in >> word;) {
                files.insert(word.starts_with(from_top) ? word.substr(from_top.size())
                                                        : (folder / word).generic_string());
            }
        }
    }
    return files;
}

/// The names at the top level that git keeps; empty without git.
std::set<std::string> kept_names() {
    const std::string command = "git -C '" + top().string() + "' ls-files 2>/dev/null";
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> pipe(popen(command.c_str(), "r"), pclose);
    std::string text;
    std::array<char, 4096> part{};
    for (std::size_t got = 0; pipe && (got = std::fread(part.data(), 1, part.size(), pipe.get())) > 0;) {
        text.append(part.data(), got);
    }
    std::set<std::string> names;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        names.insert(line.substr(0, line.find('/')));
    }
    return names;
}

/// The constants that a file has for itself, in its unnamed namespace.
std::vector<std::string> own_constants(const std::vector<std::string>& lines) {
    static const std::regex form(R"(^constexpr [^=({]*\b(\w+)(\[\w*\])?( =|\{).*)");
    std::vector<std::string> names;
    bool inside = false;
    for (const std::string& line : lines) {
        inside = line == "namespace {" || (inside && line != "} // namespace");
        if (std::smatch match; inside && std::regex_match(line, match, form)) {
            names.push_back(match[1]);
        }
    }
    return names;
}

TEST(Order, EverySourceIsBuilt) {
    const auto built = built_files();
    for (const std::string& file : source_files(source_folders)) {
        // The fuzz targets are named by a function there.
        if (file.ends_with(".cpp") && !file.starts_with("tests/fuzz/")) {
            EXPECT_TRUE(built.contains(file)) << file << " is in no CMakeLists.txt";
        }
    }
}

TEST(Order, NoFileIsTooLongToHoldOneIdea) {
    for (const std::string& file : source_files(source_folders)) {
        EXPECT_LE(lines_of(file).size(), most_lines) << file;
    }
}

// Most builds compile the files of a folder of the second level and those below as one
// (resources/cmake/WholeFolders.cmake).
TEST(Order, ConstantsOfAFolderDifferInName) {
    std::map<std::pair<std::string, std::string>, std::string> seen;
    for (const std::string& file : source_files(source_folders)) {
        if (!file.ends_with(".cpp") || file.starts_with("libimaging/boundary/wood/")) {
            continue;
        }
        const std::string folder = file.substr(0, file.find('/', file.find('/') + 1));
        for (const std::string& name : own_constants(lines_of(file))) {
            const auto [earlier, first] = seen.try_emplace({folder, name}, file);
            EXPECT_TRUE(first || earlier->second == file) << name << " is in " << file << " and " << earlier->second;
        }
    }
    EXPECT_GT(seen.size(), 100U) << "the constants were not found";
}

// QFuture::then of Qt 6.4 can run twice, seldom enough to pass every test.
TEST(Order, WorkBesideTheWindowGoesOneWay) {
    const std::string way = "app/bench/model/beside_window.h";
    for (const std::string& file : source_files({"app"})) {
        for (const Include& include : includes_in(lines_of(file))) {
            EXPECT_EQ(include.name.starts_with("QtConcurrent"), file == way && include.name == "QtConcurrentRun")
                << file << " has another way than " << way;
        }
    }
}

TEST(Order, TheTopLevelHoldsOnlyWhatItShould) {
    const std::set<std::string> allowed{"CMakeLists.txt", "CMakePresets.json",
                                        "README.md",      "DEVELOPERS.md",
                                        "LICENSE",        "CHANGELOG.md",
                                        "CITATION.cff",   "start",
                                        "check",          "app",
                                        "libcore",        "libimaging",
                                        "tests",          "resources",
                                        "demo-scans",     "docs"};
    for (const std::string& name : kept_names()) {
        EXPECT_TRUE(name.starts_with('.') || allowed.contains(name)) << name;
    }
}

} // namespace
} // namespace pithward::house
