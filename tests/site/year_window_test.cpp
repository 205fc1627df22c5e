#include "app/site/year_window.h"

#include <gtest/gtest.h>

namespace pithward::bench {
namespace {

TEST(YearWindow, ComesCloserAboutAYearThatKeepsItsPlace) {
    YearWindow years;
    years.set_all(1800, 1999);
    EXPECT_EQ(years.first(), 1800);
    EXPECT_EQ(years.last(), 1999);
    years.zoom(2.0, 1900);
    EXPECT_EQ(years.first(), 1850);
    EXPECT_EQ(years.last(), 1949);
    years.zoom(0.5, 1900);
    EXPECT_EQ(years.last() - years.first(), 199);
}

TEST(YearWindow, NeverLeavesTheYearsThatThereAre) {
    YearWindow years;
    years.set_all(1800, 1999);
    years.zoom(1000.0, 1800);
    EXPECT_EQ(years.first(), 1800);
    EXPECT_GT(years.last(), years.first()) << "some years are always shown";
    years.move(-50);
    EXPECT_EQ(years.first(), 1800);
    years.move(5000);
    EXPECT_EQ(years.last(), 1999);
    years.zoom(0.001);
    EXPECT_EQ(years.first(), 1800);
    EXPECT_EQ(years.last(), 1999);
}

TEST(YearWindow, BringsAYearIntoView) {
    YearWindow years;
    years.set_all(1800, 1999);
    years.zoom(10.0, 1800);
    years.go_to(1950);
    EXPECT_LE(years.first(), 1950);
    EXPECT_GE(years.last(), 1950);
    EXPECT_EQ(years.pointed(), 1950);
    years.go_to(3000);
    EXPECT_EQ(years.pointed(), 1999);
}

TEST(YearWindow, OtherYearsLeaveWhatIsShownWhereItCanBe) {
    YearWindow years;
    years.set_all(1800, 1999);
    years.zoom(4.0, 1900);
    const int first = years.first();
    years.set_all(1799, 1999);
    EXPECT_EQ(years.first(), first);
    years.show_all();
    years.set_all(1790, 1999);
    EXPECT_EQ(years.first(), 1790) << "who sees all goes on seeing all";
    years.set_all(1990, 1995);
    EXPECT_EQ(years.first(), 1990);
    EXPECT_EQ(years.last(), 1995) << "fewer years than are shown at least";
}

} // namespace
} // namespace pithward::bench
