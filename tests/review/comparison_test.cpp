#include "libcore/review/comparison.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

namespace pithward::review {
namespace {

Comparison compared(const Reading& first, const Reading& second) {
    const RingSeries a = test::measured(first);
    const RingSeries b = test::measured(second);
    auto comparison = compare({first, a}, {second, b});
    EXPECT_TRUE(comparison.has_value()) << (comparison ? "" : comparison.error().line());
    return comparison.value_or(Comparison{});
}

TEST(CompareReadings, AReadingAgreesWithItself) {
    const Reading reading = test::straight_reading({1, 2, 3.5, 4, 6});
    const Comparison same = compared(reading, reading);
    EXPECT_EQ(same.matched.size(), 5U);
    EXPECT_EQ(same.agreeing_rings, 4);
    EXPECT_EQ(same.share_agreeing, 1.0);
    EXPECT_EQ(same.widths, 4);
    EXPECT_EQ(same.bias, Millimetres(0.0));
    EXPECT_EQ(same.sd, Millimetres(0.0));
}

TEST(CompareReadings, BoundariesThatOnlyOneHasAreNamed) {
    // The first overlooks the one at 3 mm, the second the one at 8 mm and sees one at 9.4.
    Reading first = test::straight_reading({1, 2, 4, 5, 6, 7, 8, 9, 10});
    Reading second = test::straight_reading({1.02, 2, 3, 4, 5, 6, 7, 9, 9.4, 10});
    first.last_year = second.last_year = Year(2000);
    const Comparison both = compared(first, second);
    EXPECT_EQ(both.only_first, std::vector{BoundaryId{7}});
    EXPECT_EQ(both.only_second, (std::vector{BoundaryId{3}, BoundaryId{9}}));
    EXPECT_EQ(both.matched.size(), 8U);
    EXPECT_EQ(both.agreeing_rings, 4) << "1-2, 4-5, 5-6 and 6-7";
    EXPECT_DOUBLE_EQ(*both.share_agreeing, 2.0 * 4 / (8 + 9));
    EXPECT_EQ(both.years_differ, 3) << "all beyond the ring at 3 mm";
}

TEST(CompareReadings, BiasAndDeviationAreThoseThatWerePutIn) {
    std::mt19937 random(5);
    std::normal_distribution<double> error(0.0, 0.01);
    std::vector<double> truth;
    std::vector<double> other;
    constexpr double stretch = 1.01; // the second reads each of the 39 rings of 1 mm 0.01 mm too wide
    for (int i = 0; i < 39; ++i) {
        truth.push_back(0.5 + i);
        other.push_back((0.5 + i) * stretch + error(random));
    }
    const Comparison both = compared(test::straight_reading(truth), test::straight_reading(other));
    ASSERT_EQ(both.widths, 38);
    // A width has the errors of two boundaries: its deviation is 0.01 times the root of 2.
    EXPECT_NEAR(both.bias->value(), 0.01, 3 * 0.014 / std::sqrt(38.0));
    EXPECT_NEAR(both.sd->value(), 0.01 * std::numbers::sqrt2, 0.005);
    EXPECT_DOUBLE_EQ(both.sd_of_one->value(), both.sd->value() / std::numbers::sqrt2);
}

/// A path across round rings of these radii (mm) about a pith far below, along a ray at an angle from straight up.
Reading along_a_ray(const std::vector<double>& radii, double angle) {
    const ImagePoint pith{2000.0, 4000.0};
    const auto at = [&](double radius) {
        return pith + ImagePoint{std::sin(angle), -std::cos(angle)} * (radius * test::px_per_mm);
    };
    Reading reading = test::straight_reading(radii);
    reading.path.legs[0].points = {at(radii.front() + 1.0), at(radii.back() - 1.0)};
    for (std::size_t i = 0; i < radii.size(); ++i) {
        reading.boundaries[i].at = at(radii[i]);
        reading.boundaries[i].tangent = line_direction(angle);
    }
    return reading;
}

TEST(CompareReadings, MarksOfOneRoundRingMatchHoweverFarApartThePathsAre) {
    const std::vector<double> radii{30, 29, 28.2, 27.9, 27.6, 26, 25, 24.5, 20, 12};
    const Comparison both = compared(along_a_ray(radii, -0.1), along_a_ray(radii, 0.15));
    EXPECT_EQ(both.matched.size(), radii.size());
    for (const auto& [one, other] : both.matched) {
        EXPECT_EQ(one, other);
    }
    EXPECT_EQ(both.share_agreeing, 1.0);
    EXPECT_NEAR(both.sd->value(), 0.0, 1e-9);
}

TEST(CompareReadings, WithoutACommonScanThereIsNothingToCompare) {
    const Reading first = test::straight_reading({1, 2});
    Reading second = first;
    second.calibrations = {{"other.tif", first.calibrations.begin()->second}};
    second.path.legs[0].scan = "other.tif";
    const RingSeries series = test::measured(first);
    EXPECT_FALSE(compare({first, series}, {second, series}).has_value());
    EXPECT_EQ(compared(first, test::straight_reading({})).share_agreeing, 0.0);
}

} // namespace
} // namespace pithward::review
