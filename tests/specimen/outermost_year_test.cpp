#include "libcore/specimen/outermost_year.h"

#include <gtest/gtest.h>

namespace pithward {
namespace {

std::optional<Year> year_of(const char* cored, OuterWood outer, std::optional<double> latitude) {
    Core core;
    core.date_cored = cored;
    core.outer = outer;
    return outermost_year(core, latitude);
}

constexpr double north = 52.0;
constexpr double south = -41.0;

TEST(OutermostYear, NorthOfTheEquatorIsThatOfCoringOnceGrowthHasEnded) {
    EXPECT_EQ(year_of("2023-10-14", OuterWood::Complete, north), Year(2023));
    EXPECT_EQ(year_of("2024-03-02", OuterWood::Complete, north), Year(2023)) << "before growth began";
    EXPECT_EQ(year_of("2024-06", OuterWood::Unfinished, north), Year(2023));
    EXPECT_EQ(year_of("2024", OuterWood::Unfinished, north), Year(2023));
}

TEST(OutermostYear, SouthOfTheEquatorASeasonBearsTheYearInWhichItBegan) {
    EXPECT_EQ(year_of("2004-06-10", OuterWood::Complete, south), Year(2003));
    EXPECT_EQ(year_of("2004", OuterWood::Complete, south), Year(2003));
    EXPECT_EQ(year_of("2004-01-20", OuterWood::Unfinished, south), Year(2002)) << "in the season 2003/04";
    EXPECT_EQ(year_of("2004-11-20", OuterWood::Unfinished, south), Year(2003)) << "in the season 2004/05";
}

TEST(OutermostYear, IsNotGuessed) {
    EXPECT_FALSE(year_of("2023", OuterWood::Complete, north)) << "which half of the year?";
    EXPECT_FALSE(year_of("2004", OuterWood::Unfinished, south));
    EXPECT_FALSE(year_of("2023-10-14", OuterWood::Complete, std::nullopt));
    EXPECT_FALSE(year_of("2023-10-14", OuterWood::Lost, north));
    EXPECT_FALSE(year_of("2023-10-14", OuterWood::Unknown, north));
    EXPECT_FALSE(year_of("", OuterWood::Complete, north));
    EXPECT_FALSE(year_of("autumn", OuterWood::Complete, north));
}

} // namespace
} // namespace pithward
