#include "libcore/pith/rings_to_pith.h"

#include <gtest/gtest.h>

namespace pithward::pith {
namespace {

PithPosterior pith_at(double distance_mm) {
    return PithPosterior({{distance_mm, 0.0, 1.0, -4.0}});
}

TEST(RingsToPith, EvenRingsFillTheDistance) {
    const std::vector<double> widths(20, 2.0);
    const RingCount count = rings_to_pith(pith_at(10.0), widths);
    EXPECT_EQ(count.rings, 5);
    EXPECT_LE(count.low, 5);
    EXPECT_GE(count.high, 5);
    EXPECT_LE(count.high - count.low, 3);
}

TEST(RingsToPith, CountTheRingThatTheInnermostBoundaryCloses) {
    EXPECT_EQ(rings_to_pith(pith_at(0.3), std::vector<double>(10, 2.0)).low, 1);
    EXPECT_EQ(rings_to_pith(pith_at(0.3), std::vector<double>(10, 2.0)).rings, 1);
}

TEST(RingsToPith, ATrendTowardThePithIsFollowed) {
    std::vector<double> wider_inward; // 3 mm at the inner end
    double sum = 0.0;
    for (double width = 3.0; wider_inward.size() < 20; width *= 0.93) {
        wider_inward.push_back(width);
        sum += width;
    }
    const std::vector<double> even(20, sum / 20.0);
    EXPECT_LE(rings_to_pith(pith_at(20.0), wider_inward).rings, 7);
    EXPECT_GT(rings_to_pith(pith_at(20.0), even).rings, 10);
}

TEST(RingsToPith, UnevenGrowthMakesTheIntervalLonger) {
    const std::vector<double> even(20, 1.0);
    std::vector<double> uneven(20, 0.5);
    for (std::size_t k = 0; k < uneven.size(); ++k) {
        uneven[k] = k % 4 < 2 ? 0.5 : 1.8;
    }
    const RingCount calm = rings_to_pith(pith_at(12.0), even);
    const RingCount wild = rings_to_pith(pith_at(12.0), uneven);
    EXPECT_GT(wild.high - wild.low, calm.high - calm.low);
}

TEST(RingsToPith, WhatTheSiteKnowsCounts) {
    const std::vector<double> widths(6, 2.0);
    GrowthBeforehand wide_hearts;
    wide_hearts.trend = 0.06;
    wide_hearts.trend_sd = 0.01;
    EXPECT_LT(rings_to_pith(pith_at(30.0), widths, wide_hearts).rings, rings_to_pith(pith_at(30.0), widths).rings);
}

TEST(RingsToPith, FurtherInwardGrowthGoesBackTowardTheUsual) {
    const auto rings_of = [](double width_mm, double distance_mm, double back) {
        GrowthBeforehand growth;
        growth.trend = 0.0;
        growth.back_to_usual = back;
        return rings_to_pith(pith_at(distance_mm), std::vector<double>(20, width_mm), growth).rings;
    };
    EXPECT_GT(rings_of(3.0, 45.0, 0.3), rings_of(3.0, 45.0, 0.0));
    EXPECT_LT(rings_of(0.4, 10.0, 0.3), rings_of(0.4, 10.0, 0.0));
    EXPECT_EQ(rings_of(1.0, 20.0, 0.3), rings_of(1.0, 20.0, 0.0));
}

TEST(RingsToPith, TheSameQuestionHasTheSameAnswer) {
    const std::vector<double> widths{1.1, 0.8, 1.4, 0.9, 1.2};
    const RingCount a = rings_to_pith(pith_at(9.0), widths);
    const RingCount b = rings_to_pith(pith_at(9.0), widths);
    EXPECT_EQ(a.rings, b.rings);
    EXPECT_EQ(a.low, b.low);
    EXPECT_EQ(a.high, b.high);
}

TEST(RingsOfMeanWidth, AreTheDistanceInTheMeanOfTheInnermostFive) {
    const std::vector<double> widths{1.0, 2.0, 3.0, 2.0, 2.0, 50.0};
    EXPECT_EQ(rings_of_mean_width(10.0, widths), 5);
    EXPECT_EQ(rings_of_mean_width(0.1, widths), 1);
}

} // namespace
} // namespace pithward::pith
