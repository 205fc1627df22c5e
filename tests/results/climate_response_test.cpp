#include "libcore/results/climate_response.h"
#include "libcore/results/paired_years.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace pithward::results {
namespace {

constexpr int first_year = 1900;
constexpr int last_year = 1999;

MonthlyClimate noise(unsigned seed) {
    std::mt19937_64 generator(seed);
    std::normal_distribution<double> draw;
    MonthlyClimate climate;
    for (int year = first_year; year <= last_year; ++year) {
        for (auto& month : climate[year]) {
            month = draw(generator);
        }
    }
    return climate;
}

/// Growth that follows July of the year before, and noise of the same strength times `share`.
dating::YearSeries planted(const MonthlyClimate& climate, double share, unsigned seed) {
    std::mt19937_64 generator(seed);
    std::normal_distribution<double> draw;
    dating::YearSeries growth{first_year, Eigen::ArrayXd(last_year - first_year + 1)};
    for (int k = 0; k < growth.size(); ++k) {
        const auto before = climate.find(first_year + k - 1);
        const double july = before == climate.end() ? 0.0 : *before->second[6];
        growth.values(k) = 1.0 + 0.2 * (july + share * draw(generator));
    }
    return growth;
}

TEST(ClimateResponse, FindsTheMonthThatWasPlanted) {
    const MonthlyClimate climate = noise(1);
    const ClimateResponse response = climate_response(planted(climate, 1.0, 2), climate, Hemisphere::North);
    ASSERT_TRUE(response.strongest && response.chance);
    EXPECT_EQ(words_of(response.strongest->window), "Jul before");
    EXPECT_NEAR(*response.strongest->r, std::sqrt(0.5), 0.15);
    EXPECT_LT(*response.strongest->low, std::sqrt(0.5));
    EXPECT_GT(*response.strongest->high, std::sqrt(0.5));
    EXPECT_LT(*response.chance, 0.01);
    EXPECT_EQ(response.tried, static_cast<int>(2 * climate_windows(Hemisphere::North).size()));
    EXPECT_FALSE(response.running.empty());
    for (const RunningCorrelation& one : response.running) {
        EXPECT_GT(*one.correlation.r, 0.3) << one.from;
    }
}

TEST(ClimateResponse, WhatIsOnlyChanceIsSaidToBeSo) {
    int told_as_real = 0;
    constexpr unsigned sites = 20;
    for (unsigned seed = 0; seed < sites; ++seed) {
        const ClimateResponse response =
            climate_response(planted(noise(100 + seed), 1.0, seed), noise(200 + seed), Hemisphere::North);
        told_as_real += *response.chance < 0.05 ? 1 : 0;
    }
    // One in twenty is expected; five or more would come once in 400 such runs.
    EXPECT_LT(told_as_real, 5);
}

TEST(ClimateResponse, IntervalsHoldTheTruthAboutAsOftenAsTheySay) {
    int held = 0;
    constexpr unsigned sites = 25;
    for (unsigned seed = 0; seed < sites; ++seed) {
        const MonthlyClimate climate = noise(300 + seed);
        const ClimateResponse response =
            climate_response(planted(climate, 1.0, 400 + seed), climate, Hemisphere::North);
        const auto july = std::ranges::find(response.as_is, ClimateWindow{6, 6}, &WindowCorrelation::window);
        held += *july->low <= std::sqrt(0.5) && *july->high >= std::sqrt(0.5) ? 1 : 0;
    }
    // Nine in ten are expected; fewer than 18 would come about once in 100 such runs.
    EXPECT_GE(held, 18);
}

TEST(ClimateResponse, ADriftOfBothIsNoAgreementOnceLinesAreTakenOff) {
    MonthlyClimate climate = noise(5);
    dating::YearSeries growth = planted(noise(6), 1.0, 7);
    for (auto& [year, months] : climate) {
        for (auto& month : months) {
            *month += 0.05 * (year - first_year);
        }
    }
    for (int k = 0; k < growth.size(); ++k) {
        growth.values(k) += 0.02 * k;
    }
    const ClimateResponse response = climate_response(growth, climate, Hemisphere::North);
    const auto at = [](const std::vector<WindowCorrelation>& list) {
        return *std::ranges::find(list, ClimateWindow{18, 18}, &WindowCorrelation::window)->r;
    };
    EXPECT_GT(at(response.as_is), 0.5);
    EXPECT_LT(std::abs(at(response.detrended)), 0.3);
}

TEST(ClimateResponse, TooFewYearsAndConstantSeriesTellNothing) {
    const MonthlyClimate climate = noise(8);
    dating::YearSeries growth = planted(climate, 1.0, 9);
    dating::YearSeries shorter{first_year, growth.values.head(least_climate_years - 2)};
    EXPECT_EQ(climate_response(shorter, climate, Hemisphere::North).tried, 0);
    growth.values.setConstant(1.0);
    const ClimateResponse flat = climate_response(growth, climate, Hemisphere::North);
    EXPECT_EQ(flat.tried, 0);
    EXPECT_FALSE(flat.strongest || flat.chance);
    EXPECT_EQ(climate_response({}, {}, Hemisphere::South).tried, 0);
}

TEST(ClimateResponse, GapsOfBothSeriesAreLeftOut) {
    MonthlyClimate climate = noise(10);
    dating::YearSeries growth = planted(climate, 1.0, 11);
    growth.values(40) = dating::none;
    climate[1960][6].reset();
    const ClimateResponse response = climate_response(growth, climate, Hemisphere::North);
    const auto july = std::ranges::find(response.as_is, ClimateWindow{6, 6}, &WindowCorrelation::window);
    EXPECT_EQ(july->years, 97) << "a hundred less the first, a gap of growth and one of the climate";
}

TEST(ClimateResponse, SaysTheSameEachTime) {
    const MonthlyClimate climate = noise(12);
    const auto growth = planted(climate, 2.0, 13);
    const ClimateResponse a = climate_response(growth, climate, Hemisphere::North);
    const ClimateResponse b = climate_response(growth, climate, Hemisphere::North);
    EXPECT_EQ(a.strongest->low, b.strongest->low);
    EXPECT_EQ(a.chance, b.chance);
}

TEST(BlockDraws, TakeNeighboursTogetherRoundTheEnd) {
    BlockDraws draws(10, 3);
    for (int k = 0; k < 50; ++k) {
        const std::vector<int> places = draws.next();
        ASSERT_EQ(places.size(), 10U);
        for (std::size_t i = 0; i < places.size(); ++i) {
            EXPECT_TRUE(places[i] >= 0 && places[i] < 10);
            if (i % 3 != 0) {
                EXPECT_EQ(places[i], (places[i - 1] + 1) % 10);
            }
        }
    }
    EXPECT_EQ(block_years(100), 5);
    EXPECT_EQ(block_years(125), 5);
    EXPECT_EQ(block_years(1), 1);
}

} // namespace
} // namespace pithward::results
