#include "libcore/dating/bark_year.h"
#include "libcore/field/season.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward::field {
namespace {

using dating::GrowingSeason;

/// Year of the last complete ring, by the issue that asked for it: north, before or within the season of year Y: Y - 1,
/// after it: Y. South (September to April): cored September to December of Y: Y - 1; January to April: Y - 2; May to
/// August: Y - 1.
TEST(Season, LastCompleteRingNorth) {
    constexpr GrowingSeason season{4, 9};
    for (int month = 1; month <= 12; ++month) {
        EXPECT_EQ(season.last_complete_ring(2020, month).value(), month <= 9 ? 2019 : 2020) << month;
        EXPECT_EQ(season.has(month), month >= 4 && month <= 9) << month;
    }
}

TEST(Season, LastCompleteRingSouth) {
    constexpr GrowingSeason season{9, 4};
    for (int month = 1; month <= 12; ++month) {
        const int expected = month <= 4 ? 2018 : 2019;
        EXPECT_EQ(season.last_complete_ring(2020, month).value(), expected) << month;
        EXPECT_EQ(season.has(month), month <= 4 || month >= 9) << month;
    }
}

TEST(Season, IsTheSitesWhereItIsSet) {
    Site site;
    site.latitude = -40.0;
    Core core;
    EXPECT_EQ(dating::season_of(site, core), (GrowingSeason{10, 3}));
    core.others = {{"season_from", "9"}, {"season_to", "4"}};
    EXPECT_EQ(dating::season_of(site, core), (GrowingSeason{9, 4}));
    core.others["season_to"] = "13";
    EXPECT_EQ(dating::season_of(site, core), (GrowingSeason{10, 3})) << "no month";
    EXPECT_FALSE(dating::season_of(Site{}, Core{})) << "no latitude";
}

struct Cored {
    Site site;
    Tree tree;
    Core core;
};

Cored cored(const char* date, OuterWood outer) {
    Cored cored;
    cored.site.latitude = 50.0;
    cored.tree.living = true;
    cored.core.date_cored = date;
    cored.core.outer = outer;
    return cored;
}

std::optional<Remark> remark_on(const Cored& cored) {
    Reading reading = test::straight_reading({1.0, 2.0, 3.0});
    reading.outer = cored.core.outer;
    return season_remark(cored.site, cored.tree, cored.core, reading);
}

TEST(Season, ACoreOfTheGrowingSeasonIsAFinding) {
    const auto unfinished = remark_on(cored("2024-06-12", OuterWood::Unfinished));
    ASSERT_TRUE(unfinished);
    EXPECT_NE(unfinished->reason.find("unfinished"), std::string::npos);
    const auto complete = remark_on(cored("2024-06-12", OuterWood::Complete));
    ASSERT_TRUE(complete);
    EXPECT_NE(complete->reason.find("complete"), std::string::npos);
    EXPECT_FALSE(remark_on(cored("2024-10-12", OuterWood::Complete)));
}

TEST(Season, NoDateNoBarkNothingIsSaid) {
    EXPECT_FALSE(remark_on(cored("2024", OuterWood::Unfinished)));
    EXPECT_FALSE(remark_on(cored("", OuterWood::Unfinished)));
    EXPECT_FALSE(remark_on(cored("2024-06-12", OuterWood::Lost)));
}

/// The same rule dates the bark: no bark or no date, no year.
TEST(Season, DatesTheBarkWhereTheSiteSetsIt) {
    Cored one = cored("2020-11-03", OuterWood::Unfinished);
    one.site.latitude = -36.0;
    one.core.others = {{"season_from", "9"}, {"season_to", "4"}};
    const auto year = [&](OuterWood outer) { return dating::bark_year(one.site, one.tree, one.core, outer); };
    EXPECT_EQ(year(OuterWood::Unfinished).value().value(), 2019);
    one.core.date_cored = "2020-02-03";
    EXPECT_EQ(year(OuterWood::Unfinished).value().value(), 2018);
    one.core.date_cored = "2020-06-03";
    EXPECT_EQ(year(OuterWood::Complete).value().value(), 2019);
    EXPECT_FALSE(year(OuterWood::Unfinished)) << "a contradiction";
    EXPECT_FALSE(year(OuterWood::Lost));
    one.core.date_cored.clear();
    EXPECT_FALSE(year(OuterWood::Complete));
}

} // namespace
} // namespace pithward::field
