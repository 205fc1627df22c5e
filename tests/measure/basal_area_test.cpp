#include "libcore/measure/basal_area.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

#include <numbers>

namespace pithward {
namespace {

constexpr double pi = std::numbers::pi;

/// Rings of 3 and 2 mm, and the pith 5 mm (4 to 7) from the innermost boundary.
Reading eccentric_reading() {
    Reading reading = test::straight_reading({1.0, 4.0, 6.0});
    Pith pith;
    pith.distance = Millimetres(5.0);
    pith.distance_low = Millimetres(4.0);
    pith.distance_high = Millimetres(7.0);
    pith.missing_rings = pith.missing_low = pith.missing_high = 2;
    reading.pith = pith;
    return reading;
}

TEST(BasalArea, IsTheDifferenceOfTwoCircles) {
    const Reading reading = eccentric_reading();
    const auto areas = basal_area_increments(reading, test::measured(reading));
    ASSERT_EQ(areas.size(), 2U);
    ASSERT_TRUE(areas[0] && areas[1]);
    EXPECT_NEAR(areas[1]->mm2, pi * (49.0 - 25.0), 1e-9);
    EXPECT_NEAR(areas[0]->mm2, pi * (100.0 - 49.0), 1e-9);
    EXPECT_NEAR(areas[1]->low_mm2, pi * (36.0 - 16.0), 1e-9);
    EXPECT_NEAR(areas[0]->high_mm2, pi * (144.0 - 81.0), 1e-9);
}

TEST(BasalArea, WithThePithOnTheCoreTheInnermostRingIsACircle) {
    Reading reading = test::straight_reading({1.0, 4.0, 6.0});
    reading.pith = test::pith_at(8.0);
    const auto areas = basal_area_increments(reading, test::measured(reading));
    ASSERT_EQ(areas.size(), 3U);
    EXPECT_NEAR(areas[2]->mm2, pi * 4.0, 1e-9);
    EXPECT_NEAR(areas[0]->mm2, pi * (49.0 - 16.0), 1e-9);
}

TEST(BasalArea, AnAbsentRingAddsNothingAndAGapEndsIt) {
    Reading reading = eccentric_reading();
    reading.absent_rings = {test::absent_at(2)};
    const auto areas = basal_area_increments(reading, test::measured(reading));
    ASSERT_EQ(areas.size(), 3U);
    EXPECT_EQ(areas[1]->mm2, 0.0);
    EXPECT_NEAR(areas[0]->mm2, pi * (100.0 - 49.0), 1e-9);

    reading = eccentric_reading();
    reading.breaks = {test::break_at(4.5, 5.0, Break::Kind::LostWood)};
    for (const auto& area : basal_area_increments(reading, test::measured(reading))) {
        EXPECT_FALSE(area) << "outside a ring without a width nobody knows the radius";
    }
    reading.pith.reset();
    EXPECT_FALSE(basal_area_increments(reading, test::measured(reading)).front());
}

} // namespace
} // namespace pithward
