// What `./start` shows where there is no display: a line for each core of the demo site, however many findings it has.
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

namespace pithward::test {
namespace {

namespace fs = std::filesystem;

std::string first_word(const std::string& line) {
    return line.substr(0, line.find(' '));
}

TEST(DemoTable, HasALineForEachCoreOfTheSheet) {
    const TemporaryFolder folder;
    fs::create_directory(folder.file("demo-scans"));
    std::ofstream sheet(folder.file("demo-scans/field-sheet.csv"));
    std::ifstream whole(PITHWARD_DEMO "/field-sheet.csv");
    const std::string one_finding = "HW02A";
    const std::string some_findings = "HW05A";
    for (std::string row; std::getline(whole, row);) {
        if (row.starts_with("site,") || row.find(one_finding) != std::string::npos ||
            row.find(some_findings) != std::string::npos) {
            sheet << row << '\n';
        }
    }
    sheet.close();
    for (const std::string& core : {one_finding, some_findings}) {
        fs::create_symlink(PITHWARD_DEMO "/" + core + ".jpg", folder.file("demo-scans/" + core + ".jpg"));
    }
    const std::string command = "cd '" + folder.file("") +
                                "' && bash -c '. \"" PITHWARD_DEMO
                                "/../resources/scripts/demo.sh\"; measure_demo \"" PITHWARD_PROGRAM
                                "\"' > table.txt 2>&1";
    ASSERT_EQ(std::system(command.c_str()), 0);
    std::istringstream table(bytes_of(folder.file("table.txt")));
    std::string line;
    std::getline(table, line);
    EXPECT_EQ(first_word(line), "core");
    for (const std::string& core : {one_finding, some_findings}) {
        std::getline(table, line);
        EXPECT_EQ(first_word(line), core) << line;
        EXPECT_NE(line.find(" to 2023 "), std::string::npos) << line;
        EXPECT_EQ(line.ends_with(" 1"), core == one_finding) << "choose another core: " << line;
    }
}

} // namespace
} // namespace pithward::test
