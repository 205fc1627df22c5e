// Several cores on one scan, and scans found by the code on the mount: from the sheet to readings, against the truth.
#include "demo-scans/maker/write.h"
#include "libcore/record/project.h"
#include "tests/label/drawn_code.h"
#include "tests/support/matching.h"
#include "tests/support/rendered_scan.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <opencv2/imgproc.hpp>
#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>

namespace pithward::test {
namespace {

namespace fs = std::filesystem;

struct TrayCommands : testing::Test {
    TemporaryFolder folder;
    std::vector<demo::Truth> truths;

    int run(const std::string& arguments) {
        const std::string command =
            "cd '" + folder.file("") + "' && USER=Ida '" PITHWARD_PROGRAM "' " + arguments + " > out.log 2> said.log";
        const int status = std::system(command.c_str());
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    std::string out() { return bytes_of(folder.file("out.log")); }
    std::string said() { return bytes_of(folder.file("said.log")); }

    /// Three cores on one board, put into the folder under a name; each code in the margin by the core of its number.
    void render(const std::string& name, const std::vector<std::string>& codes = {}) {
        std::vector<demo::Scene> scenes;
        for (int i = 1; i <= 3; ++i) {
            scenes.push_back(clear_scene(21, i, 60));
            scenes.back().dpi = 800.0;
            scenes.back().margin_mm = 4.0;
        }
        const RenderedScan tray = rendered_tray(folder, scenes);
        truths = tray.truths;
        const Scan& header = tray.scan.header();
        cv::Mat picture = tray.scan.read({0, 0, header.width, header.height}).value().clone();
        fs::remove(header.file);
        constexpr int margin = 460; // a label's breadth, and as much again to the core
        if (!codes.empty()) {
            cv::copyMakeBorder(picture, picture, 0, 0, margin, 0, cv::BORDER_CONSTANT, cv::Scalar(70, 45, 30));
            for (demo::Truth& truth : truths) {
                for (ImagePoint& point : truth.path) {
                    point.x += margin;
                }
                for (demo::TrueBoundary& one : truth.boundaries) {
                    one.at.x += margin;
                }
            }
        }
        for (std::size_t i = 0; i < codes.size(); ++i) {
            const ImagePoint middle = truths[i].path[truths[i].path.size() / 2];
            constexpr double module = 8.0; // 0.25 mm
            paste(picture, drawn_code(codes[i], module), {130, static_cast<int>(middle.y)});
        }
        demo::Picture made{.pixels = {}, .width = picture.cols, .height = picture.rows, .dpi = 800.0};
        made.pixels.assign(picture.datastart, picture.dataend);
        ASSERT_TRUE(demo::write_image(folder.file(name), made, demo::Format::Png).has_value());
    }

    static double away_from_path(const demo::Truth& truth, ImagePoint at) {
        double least = 1e9;
        for (const ImagePoint& point : truth.path) {
            least = std::min(least, std::abs(point.y - at.y));
        }
        return least;
    }

    /// Each core's reading lies on the core that it is of, and has the boundaries that are there.
    void expect_read(const std::vector<std::string>& names_from_the_top) {
        const auto project = record::Project::open(folder.file("hill.pithward"), record::Project::Access::Read);
        ASSERT_TRUE(project.has_value()) << project.error().line();
        const auto cores = project->cores().value();
        for (std::size_t i = 0; i < names_from_the_top.size(); ++i) {
            const auto core =
                std::ranges::find_if(cores, [&](const auto& one) { return one.core.id == names_from_the_top[i]; });
            ASSERT_NE(core, cores.end());
            ASSERT_TRUE(core->accepted) << names_from_the_top[i] << "\n" << said();
            const Reading reading = project->reading(*core->accepted).value();
            const Matching matching = match(reading, truths[i]);
            EXPECT_GE(matching.found, matching.visible * 8 / 10) << names_from_the_top[i];
            for (const Boundary& boundary : reading.boundaries) {
                EXPECT_LT(away_from_path(truths[i], boundary.at), truths[i].dpi / 25.4) << "over a millimetre beside";
            }
        }
        EXPECT_EQ(project->readings()->size(), names_from_the_top.size());
    }
};

TEST_F(TrayCommands, TheOrderOfTheSheetTellsWhichIsWhich) {
    render("tray 7.png");
    // The cores of a tree stand apart in the sheet: it is the order of its rows that counts.
    (void)folder.write("sheet.csv",
                       "site,tree,core,wood,scan\nHill,H01,H01A,conifer,tray 7.png\nHill,H02,H02A,conifer,tray "
                       "7.png\nHill,H01,H01B,conifer,tray 7.png\n");
    ASSERT_EQ(run("create hill.pithward --sheet sheet.csv --strict"), 0) << said();
    ASSERT_EQ(run("measure hill.pithward"), 0) << said();
    expect_read({"H01A", "H02A", "H01B"});
}

TEST_F(TrayCommands, TheCodesOnTheMountTellWhichIsWhich) {
    render("img_0001.png", {"Hill/H02A", "Hill/H01B", "Hill/H01A"});
    (void)folder.write("sheet.csv",
                       "site,tree,core,wood\nHill,H01,H01A,conifer\nHill,H01,H01B,conifer\nHill,H02,H02A,conifer\n");
    ASSERT_EQ(run("create hill.pithward --sheet sheet.csv --strict"), 0) << said();
    ASSERT_EQ(run("show hill.pithward --json -"), 0) << said();
    EXPECT_NE(out().find("\"scan\": \"img_0001.png\""), std::string::npos) << out();
    ASSERT_EQ(run("measure hill.pithward"), 0) << said();
    expect_read({"H02A", "H01B", "H01A"});
}

TEST_F(TrayCommands, AnotherNumberOfCoresIsSaidAndNotGuessed) {
    render("tray.png");
    (void)folder.write("sheet.csv",
                       "site,tree,core,wood,scan\nHill,H01,H01A,conifer,tray.png\nHill,H01,H01B,conifer,tray.png\n");
    ASSERT_EQ(run("create hill.pithward --sheet sheet.csv"), 0) << said();
    EXPECT_EQ(run("measure hill.pithward"), 2);
    EXPECT_NE(said().find("H01B, tray.png: 3 cores found on the scan, 2 told for it"), std::string::npos) << said();
    EXPECT_EQ(record::Project::open(folder.file("hill.pithward"), record::Project::Access::Read)->readings()->size(),
              0U);
}

TEST_F(TrayCommands, WhatDoesNotMatchIsListed) {
    for (const char* name : {"H01A.png", "H01A.tif", "stray.png"}) {
        ASSERT_TRUE(
            demo::write_image(folder.file(name), plain_picture(300, 200, 120, 600.0), demo::Format::Png).has_value());
    }
    (void)folder.write("sheet.csv", "site,tree,core,scan\nHill,H01,H01A,\nHill,H01,H01B,\nHill,H02,H02A,lost.png\n"
                                    "Hill,H03,H03A,both.png\nHill,H03,H03B,both.png\n");
    ASSERT_TRUE(
        demo::write_image(folder.file("both.png"), plain_picture(300, 200, 120, 600.0), demo::Format::Png).has_value());
    EXPECT_EQ(run("create hill.pithward --sheet sheet.csv --strict"), 1) << said();
    for (const char* line :
         {"H01A: H01A.png and H01A.tif all claim to be its scan", "H01B: no scan is called after this core",
          "H02A: its scan lost.png is not in the folder", "stray.png: no core has this scan",
          "H01A.tif: no core has this scan, which by its name or code may be that of Hill/H01A"}) {
        EXPECT_NE(said().find(line), std::string::npos) << line << "\n" << said();
    }
    EXPECT_EQ(said().find("both.png"), std::string::npos) << said();
    ASSERT_EQ(run("show hill.pithward"), 0);
    EXPECT_NE(out().find("H01A.png: no core has this scan, may be that of H01A"), std::string::npos) << out();
    ASSERT_EQ(run("show hill.pithward --json -"), 0);
    for (const char* part : {"\"scans_to_settle\"", "\"scan\": \"stray.png\"", "\"scan\": \"lost.png\""}) {
        EXPECT_NE(out().find(part), std::string::npos) << part << "\n" << out();
    }
}

} // namespace
} // namespace pithward::test
