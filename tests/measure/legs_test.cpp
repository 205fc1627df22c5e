#include "libcore/measure/measure.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace pithward::test {
namespace {

/// A second scan of another scale, on which the path goes on toward -y.
constexpr double other_px_per_mm = 80.0;

ImagePoint on_second_leg(double mm) {
    return {300.0, 4000.0 - mm * other_px_per_mm};
}

Boundary on_second_scan(std::int64_t id, double mm) {
    Boundary boundary;
    boundary.id = BoundaryId{id};
    boundary.leg = 1;
    boundary.at = on_second_leg(mm);
    boundary.tangent = 0.0;
    boundary.sd = Millimetres(0.01);
    return boundary;
}

void add_second_leg(Reading& reading, Join join) {
    reading.path.legs.push_back(Leg{"second.tif", {on_second_leg(0.0), on_second_leg(20.0)}, join});
    reading.calibrations["second.tif"] = {
        .px_per_mm_x = other_px_per_mm, .px_per_mm_y = other_px_per_mm, .relative_sd = 0.004};
}

TEST(Legs, JoinedAtABoundaryLoseAndGainNoRing) {
    // Rings of 1.5, 0.7, 1.3 and 0.9 mm; the path leaves the first scan at boundary 3, whose second mark is 10.
    Reading reading = straight_reading({0.5, 2.0, 2.7});
    reading.last_year = Year(2023);
    add_second_leg(reading, JoinedAtBoundary{BoundaryId{3}, BoundaryId{10}});
    reading.boundaries.push_back(on_second_scan(10, 5.0));
    reading.boundaries.push_back(on_second_scan(11, 6.3));
    reading.boundaries.push_back(on_second_scan(12, 7.2));
    const RingSeries series = measured(reading);
    expect_widths(series, {1.5, 0.7, 1.3, 0.9});
    EXPECT_EQ(ring_years(series), (std::vector{2023, 2022, 2021, 2020}));
    EXPECT_EQ(boundary_years(series), (std::vector{2023, 2022, 2021, 2021, 2020, 2019}));
    EXPECT_NEAR(series.boundaries[3].s.value(), 2.7, 1e-9) << "both marks lie at one place";
    EXPECT_NEAR(series.boundaries[5].s.value(), 4.9, 1e-9);
    EXPECT_DOUBLE_EQ(series.calibration_relative_sd, 0.004);
}

TEST(Legs, AnAbsentRingMayLieAtEitherMarkOfAJoin) {
    for (const std::int64_t mark : {3, 10}) {
        Reading reading = straight_reading({0.5, 2.0, 2.7});
        reading.last_year = Year(2023);
        add_second_leg(reading, JoinedAtBoundary{BoundaryId{3}, BoundaryId{10}});
        reading.boundaries.push_back(on_second_scan(10, 5.0));
        reading.boundaries.push_back(on_second_scan(11, 6.3));
        reading.absent_rings = {absent_at(mark)};
        expect_widths(measured(reading), {1.5, 0.7, 0.0, 1.3});
    }
}

TEST(Legs, ASideStepOnTheSameScanKeepsItsRings) {
    Reading reading = straight_reading({0.5, 2.0});
    // The second leg runs 2 mm beside the first, where the same ring lies 0.4 mm further along.
    const ImagePoint step{0.0, 2.0 * px_per_mm};
    reading.path.legs.push_back(
        Leg{"scan.tif", {on_straight_path(1.0) + step, on_straight_path(30.0) + step}, JoinedAtBoundary{{2}, {10}}});
    for (const auto& [id, place] : {std::pair{10, 2.4}, {11, 3.6}, {12, 4.1}}) {
        Boundary boundary = reading.boundaries[0];
        boundary.id = BoundaryId{id};
        boundary.leg = 1;
        boundary.at = on_straight_path(place) + step;
        reading.boundaries.push_back(boundary);
    }
    expect_widths(measured(reading), {1.5, 1.2, 0.5});
}

TEST(Legs, ThreeLegsAreAddedUp) {
    Reading reading = straight_reading({0.5, 2.0});
    add_second_leg(reading, JoinedAtBoundary{BoundaryId{2}, BoundaryId{10}});
    reading.boundaries.push_back(on_second_scan(10, 3.0));
    reading.boundaries.push_back(on_second_scan(11, 4.0));
    reading.path.legs.push_back(
        Leg{"scan.tif", {on_straight_path(10.0), on_straight_path(20.0)}, JoinedAtBoundary{{11}, {20}}});
    for (const auto& [id, place] : {std::pair{20, 12.0}, {21, 12.8}}) {
        Boundary boundary = reading.boundaries[0];
        boundary.id = BoundaryId{id};
        boundary.leg = 2;
        boundary.at = on_straight_path(place);
        reading.boundaries.push_back(boundary);
    }
    const RingSeries series = measured(reading);
    expect_widths(series, {1.5, 1.0, 0.8});
    EXPECT_NEAR(series.boundaries.back().s.value(), 3.8, 1e-9);
}

TEST(Legs, JoinedAtABreakShareTheRingBetweenThem) {
    // The first leg ends where the piece ends, 0.6 mm inside boundary 2; the second begins where the next piece does.
    Reading reading = straight_reading({0.5, 2.0});
    reading.path.legs[0].points.back() = on_straight_path(2.6);
    Break crack = break_at(2.6, 2.6, Break::Kind::Crack);
    crack.id = BreakId{1};
    reading.breaks = {crack};
    add_second_leg(reading, JoinedAtBreak{BreakId{1}});
    reading.boundaries.push_back(on_second_scan(10, 0.7));
    reading.boundaries.push_back(on_second_scan(11, 1.9));
    expect_widths(measured(reading), {1.5, 1.3, 1.2});
    reading.breaks[0].kind = Break::Kind::LostWood;
    expect_widths(measured(reading), {1.5, -1.0, 1.2});
}

TEST(Legs, ATiltedRingThatGoesOverABreakIsMeasuredSquare) {
    Reading reading = straight_reading({0.5, 2.0});
    reading.path.legs[0].points.back() = on_straight_path(2.6);
    add_second_leg(reading, JoinedAtBreak{});
    reading.boundaries.push_back(on_second_scan(10, 0.7));
    // Both boundaries are tilted by 20 degrees against their leg, the same way for a walker.
    reading.boundaries[1].tangent = line_direction(0.5 * std::numbers::pi + radians(20.0));
    reading.boundaries[2].tangent = line_direction(radians(20.0));
    EXPECT_NEAR(measured(reading).rings[1].width->value(), 1.3 * std::cos(radians(20.0)), 1e-9);
}

TEST(Legs, AJoinHasToNameAMarkOnBothLegs) {
    Reading reading = straight_reading({0.5, 2.0, 2.7});
    add_second_leg(reading, JoinedAtBoundary{BoundaryId{3}, BoundaryId{10}});
    EXPECT_EQ(measure(reading).error().what, "two legs are joined at a boundary that is not marked on both");
    reading.boundaries.push_back(on_second_scan(10, 5.0));
    EXPECT_TRUE(measure(reading).has_value());
    reading.boundaries.back().leg = 0;
    EXPECT_FALSE(measure(reading).has_value());
}

} // namespace
} // namespace pithward::test
