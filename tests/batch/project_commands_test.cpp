// The commands on projects, as processes.
#include "libcore/record/project.h"
#include "tests/support/rendered_scan.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <string>

namespace pithward::test {
namespace {

namespace fs = std::filesystem;

struct ProjectCommands : testing::Test {
    TemporaryFolder folder;

    int run(const std::string& arguments) {
        const std::string command =
            "cd '" + folder.file("") + "' && USER=Ida '" PITHWARD_PROGRAM "' " + arguments + " > out.log 2> said.log";
        const int status = std::system(command.c_str());
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    std::string out() { return bytes_of(folder.file("out.log")); }
    std::string said() { return bytes_of(folder.file("said.log")); }
};

TEST_F(ProjectCommands, FromTheSheetToReadingsAndTheirHistory) {
    const std::string scan = rendered_scan(folder, clear_scene(7, 1, 25)).scan.header().file;
    fs::create_directory(folder.file("trays"));
    fs::rename(scan, folder.file("trays/H01A" + fs::path(scan).extension().string()));
    (void)folder.write("sheet.csv",
                       "site,tree,core,wood,outer,notes\nHill,H01,H01A,conifer,complete,\nHill,H01,H01B,,,lost\n");
    ASSERT_EQ(run("create hill.pithward --sheet sheet.csv --scans trays"), 0) << said();
    EXPECT_NE(said().find("H01B: no scan is called after this core"), std::string::npos) << said();
    EXPECT_EQ(run("create hill.pithward --sheet sheet.csv --scans trays"), 2);
    EXPECT_NE(said().find("the file is there already"), std::string::npos);

    ASSERT_EQ(run("measure hill.pithward"), 0) << said();
    ASSERT_EQ(run("show hill.pithward"), 0) << said();
    EXPECT_NE(out().find("proposed"), std::string::npos) << out();
    EXPECT_NE(out().find("no scan"), std::string::npos) << out();
    {
        const auto project = record::Project::open(folder.file("hill.pithward"), record::Project::Access::Read);
        ASSERT_TRUE(project.has_value()) << project.error().line();
        ASSERT_EQ(project->readings()->size(), 1U);
        const Reading reading = project->reading(ReadingId{1}).value();
        EXPECT_GT(reading.boundaries.size(), 15U);
        EXPECT_TRUE(reading.path.legs.at(0).scan.starts_with("trays/H01A")) << reading.path.legs[0].scan;
        EXPECT_TRUE(reading.calibrations.contains(reading.path.legs[0].scan));
        EXPECT_EQ(project->scans()->at(0).sha256.size(), 64U);
    }
    ASSERT_EQ(run("show hill.pithward --json -"), 0);
    EXPECT_NE(out().find("\"core\": \"H01A\""), std::string::npos) << out();
    {
        auto project = record::Project::open(folder.file("hill.pithward"), record::Project::Access::Write);
        ASSERT_TRUE(project->put_person({"Ida", "technician"}, {"Ida", record::utc_now(), "0"}).has_value());
    }
    ASSERT_EQ(run("show hill.pithward --json -"), 0);
    EXPECT_NE(out().find("\"role\": \"technician\""), std::string::npos) << out();
    ASSERT_EQ(run("history hill.pithward H01A"), 0);
    EXPECT_NE(out().find("Propose a reading"), std::string::npos) << out();
    EXPECT_NE(out().find("Ida, technician"), std::string::npos);
    EXPECT_EQ(run("history hill.pithward H99"), 2);
    // What has a reading is not read again unless it is named.
    EXPECT_EQ(run("measure hill.pithward"), 2) << "H01B alone is left and has no scan";
    EXPECT_EQ(run("measure hill.pithward H01A"), 0) << said();
    EXPECT_EQ(record::Project::open(folder.file("hill.pithward"), record::Project::Access::Read)->readings()->size(),
              2U);
}

TEST_F(ProjectCommands, ScansInFoldersBelowAreFound) {
    for (const char* path : {"site/trays/a/H01A.jpg", "site/trays/b/H01B.jpg", "site/trays/a/H02A.jpg"}) {
        fs::create_directories(fs::path(folder.file(path)).parent_path());
        (void)folder.write(path, path); // what is in them is not looked at here
    }
    (void)folder.write("site/sheet.csv",
                       "site,tree,core,scan\nHill,H01,H01A,\nHill,H01,H01B,H01B.jpg\nHill,H02,H02A,H02B.jpg\n");
    ASSERT_EQ(run("create site/hill.pithward --sheet site/sheet.csv"), 0) << said();
    EXPECT_NE(said().find("H02A: its scan H02B.jpg is not in the folder"), std::string::npos) << said();
    const auto project = record::Project::open(folder.file("site/hill.pithward"), record::Project::Access::Read);
    ASSERT_TRUE(project.has_value()) << project.error().line();
    const auto cores = project->cores().value();
    ASSERT_EQ(cores.size(), 3U);
    EXPECT_EQ(cores[0].core.scan, "trays/a/H01A.jpg") << "by its name";
    EXPECT_EQ(cores[1].core.scan, "trays/b/H01B.jpg") << "as the sheet calls it";

    (void)folder.write("site/H09A.jpg", "a scan in the folder itself");
    ASSERT_EQ(run("create site/second.pithward --sheet site/sheet.csv"), 0) << said();
    EXPECT_NE(said().find("H01A: no scan is called after this core"), std::string::npos)
        << "then the folders below are not meant\n"
        << said();
}

TEST_F(ProjectCommands, TheFieldSheetIsHeldAgainstTheCoreAndAgesAreTold) {
    const std::string scan = rendered_scan(folder, clear_scene(7, 1, 25)).scan.header().file;
    fs::create_directory(folder.file("trays"));
    fs::rename(scan, folder.file("trays/H01A" + fs::path(scan).extension().string()));
    (void)folder.write(
        "sheet.csv",
        "site,tree,core,wood,outer,status,date_cored,latitude,azimuth_deg,lean_azimuth_deg,dbh_cm,bark_mm\n"
        "Hill,H01,H01A,conifer,complete,living,2020-10-05,50,100,90,300,5\n");
    ASSERT_EQ(run("create hill.pithward --sheet sheet.csv --scans trays"), 0) << said();
    ASSERT_EQ(run("measure hill.pithward"), 0) << said();
    ASSERT_EQ(run("export hill.pithward --json - --to-height 8,3"), 0) << said();
    EXPECT_NE(out().find("compression wood is likely"), std::string::npos) << out();
    EXPECT_NE(out().find("\"field-sheet\""), std::string::npos);
    const bool aged = out().find("\"age\": null") == std::string::npos;
    if (aged) {
        EXPECT_NE(out().find("by the stem's diameter"), std::string::npos) << "a stem of three metres";
        EXPECT_NE(out().find("\"establishment_year\""), std::string::npos);
    }
    ASSERT_EQ(run("show hill.pithward --json - --to-height 8,3"), 0) << said();
    EXPECT_NE(out().find("\"age\""), std::string::npos);
    ASSERT_EQ(run("export hill.pithward --ages ages.csv --basal-area area.csv"), 0) << said();
    EXPECT_NE(bytes_of(folder.file("ages.csv")).find("Hill,H01,H01A,"), std::string::npos);
    EXPECT_NE(bytes_of(folder.file("area.csv")).find("H01A,2020,1,"), std::string::npos);
    EXPECT_EQ(run("export hill.pithward --json - --to-height 900"), 2);
}

TEST_F(ProjectCommands, AScanOutsideIsNotOpened) {
    (void)folder.write("sheet.csv", "site,tree,core,scan\nHill,H01,H01A,../../etc/passwd\n");
    ASSERT_EQ(run("create hill.pithward --sheet sheet.csv"), 0) << said();
    EXPECT_NE(said().find("is not in the folder of the scans"), std::string::npos) << said();
    EXPECT_EQ(run("measure hill.pithward"), 2);
    EXPECT_NE(said().find("is outside of the project's folder"), std::string::npos) << said();
    EXPECT_EQ(run("create other.pithward --sheet sheet.csv --scans /usr"), 2);
    EXPECT_NE(said().find("outside of the project's folder"), std::string::npos) << said();
    EXPECT_FALSE(fs::exists(folder.file("other.pithward")));
}

TEST_F(ProjectCommands, AScanOutsideIsReadWhereItsFolderIsNamed) {
    const std::string scan = rendered_scan(folder, clear_scene(7, 1, 25)).scan.header().file;
    const std::string name = "H01A" + fs::path(scan).extension().string();
    fs::create_directories(folder.file("elsewhere"));
    fs::create_directories(folder.file("other"));
    fs::create_directories(folder.file("home/trays"));
    fs::rename(scan, folder.file("elsewhere/" + name));
    (void)folder.write("sheet.csv", "site,tree,core\nHill,H01,H01A\n");
    // A folder beside, named for the one and for the other.
    EXPECT_EQ(run("create home/a.pithward --sheet sheet.csv --scans elsewhere"), 2);
    EXPECT_NE(said().find("--outside"), std::string::npos) << said();
    EXPECT_EQ(run("create home/a.pithward --sheet sheet.csv --scans elsewhere --outside other"), 2);
    ASSERT_EQ(run("create home/a.pithward --sheet sheet.csv --scans elsewhere --outside elsewhere"), 0) << said();
    EXPECT_EQ(run("measure home/a.pithward"), 2);
    EXPECT_NE(said().find("elsewhere/" + name), std::string::npos) << said();
    EXPECT_NE(said().find("allow its folder with --outside DIR"), std::string::npos) << said();
    EXPECT_EQ(run("measure home/a.pithward --outside other"), 2);
    EXPECT_EQ(run("measure home/a.pithward --outside nowhere"), 2);
    EXPECT_NE(said().find("nowhere: there is no such folder"), std::string::npos) << said();
    ASSERT_EQ(run("measure home/a.pithward --outside other --outside elsewhere"), 0) << said();
    EXPECT_EQ(record::Project::open(folder.file("home/a.pithward"), record::Project::Access::Read)->readings()->size(),
              1U);
    EXPECT_EQ(run("measure elsewhere/" + name + " --outside elsewhere"), 2) << "it stands with a project only";
    // A link that leads there is no way around.
    fs::create_symlink(folder.file("elsewhere/" + name), folder.file("home/trays/" + name));
    ASSERT_EQ(run("create home/b.pithward --sheet sheet.csv --scans home/trays"), 0) << said();
    EXPECT_NE(said().find("outside of the project's folder"), std::string::npos) << said();
    EXPECT_EQ(run("measure home/b.pithward"), 2) << "the core has no scan";
    (void)folder.write("home/plain.txt", "a scan, to begin with");
    fs::rename(folder.file("home/trays/" + name), folder.file("home/link"));
    fs::rename(folder.file("home/plain.txt"), folder.file("home/trays/" + name));
    ASSERT_EQ(run("create home/c.pithward --sheet sheet.csv --scans home/trays"), 0) << said();
    fs::rename(folder.file("home/link"), folder.file("home/trays/" + name)); // swapped
    EXPECT_EQ(run("measure home/c.pithward"), 2);
    EXPECT_NE(said().find("outside of the project's folder"), std::string::npos) << said();
    EXPECT_EQ(run("measure home/c.pithward --outside elsewhere"), 2) << "it may be read, but is not the scan";
    EXPECT_NE(said().find("another one than the project knows"), std::string::npos) << said();
}

TEST_F(ProjectCommands, AnotherFileInThePlaceOfAScanIsNotMeasured) {
    const std::string scan = rendered_scan(folder, clear_scene(7, 1, 25)).scan.header().file;
    const std::string name = "H01A" + fs::path(scan).extension().string();
    fs::create_directories(folder.file("home"));
    fs::rename(scan, folder.file("home/" + name));
    (void)folder.write("sheet.csv", "site,tree,core\nHill,H01,H01A\n");
    ASSERT_EQ(run("create home/a.pithward --sheet sheet.csv --scans home"), 0) << said();
    const std::string bytes = bytes_of(folder.file("home/" + name));
    (void)folder.write("home/" + name, bytes + "\n");
    EXPECT_EQ(run("measure home/a.pithward"), 2);
    EXPECT_NE(said().find("another one than the project knows"), std::string::npos) << said();
    (void)folder.write("home/elsewhere.png", bytes); // the scan itself turns up again
    EXPECT_EQ(run("measure home/a.pithward"), 0) << said();
    EXPECT_NE(said().find("was moved"), std::string::npos) << said();
}

TEST_F(ProjectCommands, ANameThatWouldForgeALineOfTheHistoryIsRefused) {
    (void)folder.write("sheet.csv", "site,tree,core\nHill,H01,H01A\n");
    EXPECT_EQ(run("create a.pithward --sheet sheet.csv --scans . --by \"$(printf 'Ida\\nSue passed all')\""), 2);
    EXPECT_NE(said().find("control characters"), std::string::npos) << said();
    EXPECT_FALSE(fs::exists(folder.file("a.pithward")));
    EXPECT_EQ(run("create a.pithward --sheet sheet.csv --scans . --by '  '"), 2);
}

TEST_F(ProjectCommands, WhatIsNoProjectIsRefusedInOneLine) {
    (void)folder.write("bad.pithward", "nothing of the kind");
    for (const char* command : {"show bad.pithward", "history bad.pithward", "measure bad.pithward"}) {
        EXPECT_EQ(run(command), 2) << command;
        EXPECT_EQ(said(),
                  "pithward: bad.pithward: this is no project of Pithward; if it was one, it is damaged: use a copy "
                  "from before; nothing was changed\n");
        EXPECT_EQ(out(), "");
    }
    (void)folder.write("notes.txt", "nothing of the kind");
    EXPECT_EQ(run("show notes.txt"), 2);
    EXPECT_NE(said().find("choose a file that ends in .pithward"), std::string::npos) << said();
    (void)folder.write("empty.pithward", "");
    EXPECT_EQ(run("show empty.pithward"), 2);
    EXPECT_NE(said().find("the file is empty"), std::string::npos) << said();
    EXPECT_EQ(bytes_of(folder.file("bad.pithward")), "nothing of the kind");
}

} // namespace
} // namespace pithward::test
