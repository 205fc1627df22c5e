#include "tests/house/dependency_table.h"

#include <gtest/gtest.h>

namespace pithward::house {
namespace {

TEST(Dependencies, EveryFileUsesOnlyWhatItsFolderMayUse) {
    int seen = 0;
    for (const std::string& file : source_files({"libcore", "libimaging", "app", "demo-scans/maker"})) {
        for (const Include& include : includes_in(lines_of(file))) {
            const auto fault = objection(file, include);
            EXPECT_FALSE(fault) << file << ":" << include.line << ": " << include.name << ": " << fault.value_or("");
            ++seen;
        }
    }
    EXPECT_GT(seen, 500) << "the files were not found";
}

TEST(Dependencies, AWrongIncludeIsSeen) {
    const auto outside = [](const char* file, const char* name) { return objection(file, {name, false, 1}); };
    EXPECT_TRUE(outside("libcore/measure/ring_width.cpp", "QString"));
    EXPECT_TRUE(outside("libcore/specimen/scan.h", "opencv2/core.hpp"));
    EXPECT_TRUE(outside("libcore/specimen/scan.h", "vips/vips.h"));
    EXPECT_TRUE(outside("libimaging/strip/lanes.cpp", "vips/vips.h"));
    EXPECT_TRUE(outside("libimaging/scan/scan_file.cpp", "QImage"));
    EXPECT_TRUE(outside("libimaging/scan/scan_file.cpp", "opencv2/imgcodecs.hpp"));
    EXPECT_TRUE(outside("app/batch/measure.cpp", "QWidget"));
    EXPECT_TRUE(outside("app/bench/scan_view/tile_loader.cpp", "vips/vips.h"));
    EXPECT_FALSE(outside("libcore/record/store.cpp", "QSqlDatabase"));

    const auto ours = [](const char* file, const char* name) { return objection(file, {name, true, 1}); };
    EXPECT_TRUE(ours("libcore/specimen/scan.h", "libcore/measure/measure.h"));
    EXPECT_TRUE(ours("libcore/measure/measure.cpp", "libcore/formats/decadal.h"));
    EXPECT_TRUE(ours("libimaging/scan/scan_file.h", "libimaging/strip/lanes.h"));
    EXPECT_TRUE(ours("libimaging/strip/lanes.h", "libimaging/boundary/mark.h"));
    EXPECT_TRUE(ours("libimaging/boundary/mark.h", "libcore/measure/measure.h"));
    EXPECT_TRUE(ours("demo-scans/maker/scene.h", "libimaging/scan/scan_file.h"));
    EXPECT_TRUE(ours("libcore/measure/measure.cpp", "measure.h")) << "includes are written from the top folder";
    EXPECT_TRUE(ours("libcore/unheard/of.cpp", "libcore/specimen/units.h"));
    EXPECT_FALSE(ours("libimaging/boundary/mark.h", "libimaging/strip/lanes.h"));
}

TEST(Dependencies, IncludesAreReadFromTheText) {
    const auto includes =
        includes_in({"#pragma once", "#include <vector>", "  # include \"a/b.h\" // why", "// #include <no>"});
    ASSERT_EQ(includes.size(), 2U);
    EXPECT_EQ(includes[0].name, "vector");
    EXPECT_FALSE(includes[0].quoted);
    EXPECT_EQ(includes[1].name, "a/b.h");
    EXPECT_TRUE(includes[1].quoted);
    EXPECT_EQ(includes[1].line, 3);
}

} // namespace
} // namespace pithward::house
