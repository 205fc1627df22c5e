#include "app/batch/dropped_cores.h"

#include <gtest/gtest.h>

namespace pithward::batch {
namespace {

const Fault no_wood{"tray.tif", "no wood was found under the path", "draw the path"};
const Fault damaged{"tray.tif", "the image data is damaged", "scan again"};

TEST(DroppedCores, EachThingThatWasWrongIsOneLineWithItsCores) {
    DroppedCores dropped("tray.tif", 8);
    dropped.add(1, no_wood);
    dropped.add(4, damaged);
    dropped.add(6, no_wood);
    const auto faults = dropped.by_kind();
    ASSERT_EQ(faults.size(), 2U);
    EXPECT_EQ(faults[0].line(),
              "tray.tif: cores 2, 7 of 8 could not be measured: no wood was found under the path; draw the path");
    EXPECT_EQ(faults[1].line(), "tray.tif: core 5 of 8 could not be measured: the image data is damaged; scan again");
}

TEST(DroppedCores, AllOfThemAreOneLine) {
    DroppedCores dropped("tray.tif", 40);
    for (std::size_t i = 0; i < 40; ++i) {
        dropped.add(i, i == 3 ? damaged : no_wood);
    }
    const std::string line = dropped.all().line();
    EXPECT_EQ(line.find("no wood"), line.rfind("no wood"));
    EXPECT_NE(line.find("none of the 40 cores"), std::string::npos) << line;
    EXPECT_NE(line.find("(39)"), std::string::npos) << line;
    EXPECT_NE(line.find("the image data is damaged (1)"), std::string::npos) << line;
}

TEST(DroppedCores, TheOnlyCoreOfAScanSaysItsOwnFault) {
    DroppedCores dropped("tray.tif", 1);
    dropped.add(0, no_wood);
    EXPECT_EQ(dropped.all().line(), no_wood.line());
}

} // namespace
} // namespace pithward::batch
