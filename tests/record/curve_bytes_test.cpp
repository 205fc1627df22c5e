#include "libcore/record/curve_bytes.h"

#include <gtest/gtest.h>

#include <random>

namespace pithward::record {
namespace {

TEST(CurveBytes, AnyCurveComesBackToTheLastBit) {
    std::mt19937 random(3);
    std::uniform_real_distribution<double> place(-30'000.0, 30'000.0);
    for (int n = 0; n < 500; ++n) {
        std::vector<ImagePoint> curve;
        for (unsigned k = random() % 40; k > 0; --k) {
            curve.push_back({place(random), place(random)});
        }
        EXPECT_EQ(curve_from(curve_bytes(curve)).value(), curve);
        const auto on_grid = on_curve_grid(curve);
        EXPECT_EQ(curve_from(curve_bytes(on_grid)).value(), on_grid);
        EXPECT_EQ(on_curve_grid(on_grid), on_grid);
        for (std::size_t k = 0; k < curve.size(); ++k) {
            EXPECT_NEAR(on_grid[k].x, curve[k].x, 1.0 / 128.0);
        }
    }
}

TEST(CurveBytes, ACurveOnTheGridIsShort) {
    std::vector<ImagePoint> curve;
    curve.reserve(40);
    for (int k = 0; k < 40; ++k) {
        curve.push_back({5000.0 + 0.3 * k, 2000.0 + 12.7 * k});
    }
    EXPECT_LT(curve_bytes(on_curve_grid(curve)).size(), 40U * 4U);
    EXPECT_TRUE(curve_bytes({}).empty());
}

TEST(CurveBytes, WhatIsNoCurveIsRefusedOrHarmless) {
    EXPECT_FALSE(curve_from("x"));
    EXPECT_FALSE(curve_from("d123"));
    EXPECT_FALSE(curve_from(std::string("s\x01", 2))) << "an x without its y";
    EXPECT_FALSE(curve_from("s" + std::string(30, '\xFF')));
    std::mt19937 random(4);
    for (int n = 0; n < 20'000; ++n) {
        std::string bytes(1, random() % 2 == 0 ? 's' : 'd');
        for (unsigned k = random() % 40; k > 0; --k) {
            bytes += static_cast<char>(random() % 256);
        }
        (void)curve_from(bytes);
    }
}

} // namespace
} // namespace pithward::record
