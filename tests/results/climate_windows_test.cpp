#include "libcore/results/climate_windows.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace pithward::results {
namespace {

/// Each month's value is 100 times the year's last two digits and the month.
MonthlyClimate telling(int first, int last) {
    MonthlyClimate climate;
    for (int year = first; year <= last; ++year) {
        for (int month = 0; month < months_a_year; ++month) {
            climate[year][static_cast<std::size_t>(month)] = 100.0 * (year % 100) + month + 1;
        }
    }
    return climate;
}

bool has(const std::vector<ClimateWindow>& windows, const std::string& words) {
    return std::ranges::any_of(windows, [&](const ClimateWindow& one) { return words_of(one) == words; });
}

TEST(ClimateWindows, MonthsOfTheYearBeforeAreTriedToo) {
    const auto north = climate_windows(Hemisphere::North);
    for (const char* words : {"May before", "Dec before", "Jan", "Jul", "Oct", "Jun to Aug before", "Dec before to Feb",
                              "Jun to Aug", "Apr to Sep"}) {
        EXPECT_TRUE(has(north, words)) << words;
    }
    EXPECT_FALSE(has(north, "Nov"));
}

TEST(ClimateWindows, SouthOfTheEquatorSeasonsAreHalfAYearLater) {
    const auto south = climate_windows(Hemisphere::South);
    for (const char* words : {"Nov before", "Dec", "Jan after", "Apr after", "Dec to Feb after", "Oct to Mar after"}) {
        EXPECT_TRUE(has(south, words)) << words;
    }
    EXPECT_EQ(south.size(), climate_windows(Hemisphere::North).size());
}

TEST(ClimateWindows, AWindowsMeanGoesOverTheTurnOfTheYear) {
    const MonthlyClimate climate = telling(1950, 1952);
    const ClimateWindow winter{11, 13}; // December before to February.
    EXPECT_DOUBLE_EQ(window_means(climate, winter).at(1951), (5012.0 + 5101.0 + 5102.0) / 3.0);
    EXPECT_TRUE(std::isnan(window_means(climate, winter).at(1950))) << "there is no December 1949";
    EXPECT_DOUBLE_EQ(window_means(climate, {25, 25}).at(1949), 5002.0) << "February of the year after";
    EXPECT_DOUBLE_EQ(window_means(climate, {6, 6}).at(1953), 5207.0) << "July of the year before";
}

TEST(ClimateWindows, AMissingMonthMakesNoMean) {
    MonthlyClimate climate = telling(1950, 1952);
    climate[1951][6].reset();
    EXPECT_TRUE(std::isnan(window_means(climate, {17, 19}).at(1951)));
    EXPECT_FALSE(std::isnan(window_means(climate, {17, 19}).at(1952)));
    EXPECT_EQ(window_means({}, {17, 19}).size(), 0);
}

} // namespace
} // namespace pithward::results
