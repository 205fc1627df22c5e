#include "libcore/dating/bark_year.h"

#include <gtest/gtest.h>

namespace pithward::dating {
namespace {

constexpr double north = 47.5;
constexpr double south = -38.0;

Outcome<Year> year_of(const std::string& date, OuterWood outer, std::optional<double> latitude = north,
                      std::optional<bool> living = true) {
    Site site;
    site.latitude = latitude;
    Tree tree;
    tree.living = living;
    Core core;
    core.id = "H01A";
    core.date_cored = date;
    return bark_year(site, tree, core, outer);
}

int year(const std::string& date, OuterWood outer, double latitude = north) {
    const auto found = year_of(date, outer, latitude);
    EXPECT_TRUE(found.has_value()) << date << ": " << (found ? "" : found.error().line());
    return found ? found->value() : 0;
}

std::string refused(const std::string& date, OuterWood outer, std::optional<double> latitude = north,
                    std::optional<bool> living = true) {
    const auto found = year_of(date, outer, latitude, living);
    EXPECT_FALSE(found.has_value()) << date;
    return found ? "" : found.error().line();
}

TEST(BarkYear, CompleteWoodIsOfTheSeasonThatEndedLast) {
    EXPECT_EQ(year("2023-10-04", OuterWood::Complete), 2023);
    EXPECT_EQ(year("2023-12-31", OuterWood::Complete), 2023);
    EXPECT_EQ(year("2024-01-01", OuterWood::Complete), 2023);
    EXPECT_EQ(year("2024-04", OuterWood::Complete), 2023);
}

TEST(BarkYear, UnfinishedWoodIsNoYearOfTheSeries) {
    EXPECT_EQ(year("2024-07-15", OuterWood::Unfinished), 2023);
    EXPECT_EQ(year("2024", OuterWood::Unfinished), 2023);
}

// The design: south of the equator the season 2003/04 is ring 2003.
TEST(BarkYear, SouthOfTheEquatorARingBearsTheYearInWhichItsGrowthBegan) {
    EXPECT_EQ(year("2004-04-20", OuterWood::Complete, south), 2003);
    EXPECT_EQ(year("2004-08-20", OuterWood::Complete, south), 2003);
    EXPECT_EQ(year("2004-01-20", OuterWood::Unfinished, south), 2002);
    EXPECT_EQ(year("2003-11-20", OuterWood::Unfinished, south), 2002);
}

TEST(BarkYear, WhatTheSheetDoesNotTellIsNotGuessed) {
    EXPECT_EQ(refused("", OuterWood::Complete),
              "H01A: its years are not known: the field sheet has no date of coring; enter date_cored, or set the year "
              "by hand");
    EXPECT_NE(refused("2023", OuterWood::Complete).find("no month"), std::string::npos);
    EXPECT_NE(refused("2023", OuterWood::Unfinished, south).find("no month"), std::string::npos);
    EXPECT_NE(refused("2023-07-10", OuterWood::Complete).find("middle of the season"), std::string::npos);
    EXPECT_NE(refused("2023-01-10", OuterWood::Unfinished).find("contradiction"), std::string::npos);
    EXPECT_NE(refused("2023-10", OuterWood::Lost).find("lost"), std::string::npos);
    EXPECT_NE(refused("2023-10", OuterWood::Unknown).find("unknown"), std::string::npos);
    EXPECT_NE(refused("2023-10", OuterWood::Complete, std::nullopt).find("latitude"), std::string::npos);
    EXPECT_NE(refused("2023-10", OuterWood::Complete, 3.0).find("tropics"), std::string::npos);
    EXPECT_NE(refused("2023-10", OuterWood::Complete, north, false).find("dead"), std::string::npos);
    EXPECT_NE(refused("2023-10", OuterWood::Complete, north, std::nullopt).find("lived"), std::string::npos);
}

} // namespace
} // namespace pithward::dating
