#include "libcore/measure/measure.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

double place(const Reading& reading, std::size_t leg, ImagePoint at) {
    const auto found = place_on_path(reading, leg, at);
    EXPECT_TRUE(found.has_value());
    return found.value_or(Millimetres(-1.0)).value();
}

TEST(PlaceOnPath, IsThatOfTheFoot) {
    const Reading reading = straight_reading({});
    EXPECT_NEAR(place(reading, 0, on_straight_path(3.2)), 3.2, 1e-9);
    EXPECT_NEAR(place(reading, 0, on_straight_path(3.2) + ImagePoint{0.0, 60.0}), 3.2, 1e-9);
}

TEST(PlaceOnPath, GoesOnBeyondBothEnds) {
    const Reading reading = straight_reading({});
    EXPECT_NEAR(place(reading, 0, on_straight_path(-1.5)), -1.5, 1e-9);
    EXPECT_NEAR(place(reading, 0, on_straight_path(41.0)), 41.0, 1e-9);
}

TEST(PlaceOnPath, FollowsABend) {
    Reading reading = straight_reading({});
    const ImagePoint corner = on_straight_path(10.0);
    reading.path.legs[0].points = {on_straight_path(0.0), corner, corner, corner + ImagePoint{0.0, 10.0 * px_per_mm}};
    EXPECT_NEAR(place(reading, 0, corner + ImagePoint{20.0, 4.0 * px_per_mm}), 14.0, 1e-9);
    EXPECT_NEAR(place(reading, 0, on_straight_path(6.0) + ImagePoint{0.0, -10.0}), 6.0, 1e-9);
}

TEST(PlaceOnPath, IncludesBreaksAndEarlierLegs) {
    Reading reading = straight_reading({});
    reading.breaks = {break_at(2.0, 3.0, Break::Kind::Crack)};
    EXPECT_NEAR(place(reading, 0, on_straight_path(5.0)), 5.0, 1e-9);
    reading.path.legs.push_back(Leg{"scan.tif", {on_straight_path(50.0), on_straight_path(60.0)}, JoinedAtBreak{}});
    EXPECT_NEAR(place(reading, 1, on_straight_path(51.0)), 41.0, 1e-9);
}

TEST(PlaceOnPath, NeedsALegOfThePath) {
    EXPECT_FALSE(place_on_path(straight_reading({}), 1, {0.0, 0.0}).has_value());
}

} // namespace
} // namespace pithward::test
