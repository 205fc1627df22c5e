// The archive package of a project, by the command as a process, on cores of the demo site.
#include "libcore/formats/decadal.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sys/wait.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace pithward::test {
namespace {

namespace fs = std::filesystem;

std::string packed_bytes(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

struct PackageCommand : testing::Test {
    TemporaryFolder folder;

    int shell(const std::string& line) {
        const std::string command = "cd '" + folder.file("") + "' && " + line + " > out.log 2> said.log";
        const int status = std::system(command.c_str());
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    int run(const std::string& arguments) {
        return shell("env -u DISPLAY USER=Ida '" PITHWARD_PROGRAM "' " + arguments);
    }
    std::string said() { return packed_bytes(folder.file("said.log")); }

    void make_project(const std::string& sheet) {
        fs::copy_file(fs::path(PITHWARD_DEMO) / "HW01A.jpg", folder.file("HW01A.jpg"));
        (void)folder.write("sheet.csv", sheet);
        ASSERT_EQ(run("create hw.pithward --sheet sheet.csv --scans ."), 0) << said();
    }
};

/// From a bare sheet and a scan in three commands to a package whose numbers are the truth of the demo site.
TEST_F(PackageCommand, HoldsTheTruthAndTellsWhatIsMissing) {
    make_project("site,tree,core,species,wood,date_cored,status,outer,scan,latitude,longitude\n"
                 "HW,HW01,HW01A,Pinus sp.,conifer,2023-10-04,living,complete,HW01A.jpg,47.5,12.5\n");
    EXPECT_EQ(run("package hw.pithward --out early"), 2);
    EXPECT_NE(said().find("run pithward measure"), std::string::npos) << said();
    ASSERT_EQ(run("measure hw.pithward --quiet"), 0) << said();

    EXPECT_EQ(run("package hw.pithward --only passed --out early"), 2);
    EXPECT_NE(said().find("no reading is passed"), std::string::npos) << said();
    EXPECT_FALSE(fs::exists(folder.file("early")));

    ASSERT_EQ(run("package hw.pithward --out hw --strict"), 1) << said();
    EXPECT_NE(said().find("needed: Investigators"), std::string::npos) << said();
    EXPECT_EQ(said().find("Latitude"), std::string::npos) << said();
    EXPECT_NE(said().find("one series only"), std::string::npos) << said();
    EXPECT_NE(said().find("readings that no second person has passed: 1"), std::string::npos) << said();
    EXPECT_NE(said().find("findings are open: "), std::string::npos) << said();
    EXPECT_EQ(shell("cd hw && sha256sum -c SHA256SUMS"), 0) << said();
    for (const char* name : {"hw.rwl", "hw-template.txt", "hw-metadata.csv", "hw-readings.json", "hw-report.pdf",
                             "hw-report.html", "README.txt"}) {
        EXPECT_GT(fs::file_size(folder.file("hw") + "/" + name), 100U) << name;
    }

    std::ifstream in(folder.file("hw") + "/hw.rwl");
    const auto table = read_decadal(in);
    ASSERT_TRUE(table) << table.error().line();
    ASSERT_EQ(table->series.size(), 1U);
    const WidthSeries& series = table->series.front();
    const auto truth = nlohmann::json::parse(packed_bytes(fs::path(PITHWARD_DEMO) / "HW01A.truth.json"));
    int compared = 0;
    for (const auto& ring : truth.at("widths")) {
        const int index = ring.at("year").get<int>() - series.first_year.value();
        if (index >= 0 && index < static_cast<int>(series.widths.size()) && !ring.at("radial_mm").is_null()) {
            const auto& width = series.widths[static_cast<std::size_t>(index)];
            ASSERT_TRUE(width) << ring;
            EXPECT_NEAR(width->value(), ring.at("radial_mm").get<double>(), 0.1) << ring;
            ++compared;
        }
    }
    EXPECT_GT(compared, 30);
}

TEST_F(PackageCommand, ReplacesOnlyAPackageAndOnlyWhenTold) {
    make_project("site,tree,core,wood,date_cored,status,outer,scan,latitude\n"
                 "HW,HW01,HW01A,conifer,2023-10-04,living,complete,HW01A.jpg,47.5\n");
    ASSERT_EQ(run("measure hw.pithward --quiet"), 0) << said();
    ASSERT_EQ(run("package hw.pithward --out hw.zip --quiet"), 0) << said();
    EXPECT_EQ(packed_bytes(folder.file("hw.zip")).substr(0, 2), "PK");
    EXPECT_EQ(run("package hw.pithward --out hw.zip"), 2);
    ASSERT_EQ(run("package hw.pithward --out hw --quiet"), 0) << said();
    EXPECT_EQ(run("package hw.pithward --out hw"), 2);
    EXPECT_EQ(run("package hw.pithward --out hw --force"), 0) << said();
    (void)folder.write("hw/letter.txt", "not ours to remove");
    EXPECT_EQ(run("package hw.pithward --out hw --force"), 2);
    EXPECT_NE(said().find("more than a package"), std::string::npos) << said();
    EXPECT_EQ(packed_bytes(folder.file("hw/letter.txt")), "not ours to remove");
}

TEST_F(PackageCommand, ASiteWithNoDatedCoreIsRefusedInWords) {
    make_project("site,tree,core,wood,status,outer,scan\nHW,HW01,HW01A,conifer,dead,lost,HW01A.jpg\n");
    ASSERT_EQ(run("measure hw.pithward --quiet"), 0) << said();
    EXPECT_EQ(run("package hw.pithward --out hw"), 2);
    EXPECT_NE(said().find("dated series only"), std::string::npos) << said();
    EXPECT_FALSE(fs::exists(folder.file("hw")));
}

TEST_F(PackageCommand, AllThatTheSheetLacksForYearsIsNamedAtOnce) {
    make_project("site,tree,core,wood,outer,scan\nHW,HW01,HW01A,conifer,complete,HW01A.jpg\n");
    ASSERT_EQ(run("measure hw.pithward --quiet"), 0) << said();
    EXPECT_EQ(run("package hw.pithward --out hw"), 2);
    EXPECT_NE(said().find("HW01A: the field sheet does not tell status, date_cored, latitude"), std::string::npos)
        << said();
    EXPECT_NE(said().find("the archive will miss latitude, longitude, elevation_m, species, collector"),
              std::string::npos)
        << said();
    EXPECT_EQ(std::ranges::count(said(), '\n'), 1) << said();
}

/// The seasons that a project is held against are those of its own side of the equator.
TEST_F(PackageCommand, ASouthernSiteIsHeldAgainstSouthernSeasons) {
    make_project("site,tree,core,wood,date_cored,status,outer,scan,latitude\n"
                 "HW,HW01,HW01A,conifer,2024-05-04,living,complete,HW01A.jpg,-47.5\n");
    ASSERT_EQ(run("measure hw.pithward --quiet"), 0) << said();
    std::string climate = "year,month,value\n";
    for (int year = 1900; year < 2025; ++year) {
        for (int month = 1; month <= 12; ++month) {
            climate += std::to_string(year) + ',' + std::to_string(month) + ',' +
                       std::to_string((year * 31 + month * month * 17) % 23) + '\n';
        }
    }
    (void)folder.write("climate.csv", climate);
    const auto said_with = [&](const std::string& option) {
        EXPECT_EQ(run("climate hw.pithward --climate climate.csv --quiet " + option), 0) << said();
        return packed_bytes(folder.file("out.log"));
    };
    const std::string untold = said_with("");
    EXPECT_EQ(untold, said_with("--hemisphere south"));
    EXPECT_NE(untold, said_with("--hemisphere north"));
}

} // namespace
} // namespace pithward::test
