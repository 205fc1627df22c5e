#include "libcore/measure/measure.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace pithward::test {
namespace {

using Years = std::vector<int>;
constexpr int none = 9999;

TEST(Measure, NBoundariesGiveOneWidthFewer) {
    Reading reading = straight_reading({0.5, 2.0, 2.7, 4.0});
    reading.last_year = Year(2023);
    const RingSeries series = measured(reading);
    expect_widths(series, {1.5, 0.7, 1.3});
    EXPECT_EQ(ring_years(series), (Years{2023, 2022, 2021}));
    EXPECT_EQ(boundary_years(series), (Years{2023, 2022, 2021, 2020}));
    EXPECT_EQ(series.boundaries[2].ring_number, 3);
    EXPECT_NEAR(series.boundaries[2].s.value(), 2.7, 1e-9);
    EXPECT_NEAR(series.rings[0].sd.value(), 0.01 * std::numbers::sqrt2, 1e-9);
    EXPECT_DOUBLE_EQ(series.calibration_relative_sd, 0.002);
}

TEST(Measure, OneBoundaryGivesNoWidthAndNoneGivesAnEmptySeries) {
    Reading reading = straight_reading({1.0});
    reading.last_year = Year(2000);
    EXPECT_TRUE(measured(reading).rings.empty());
    EXPECT_EQ(boundary_years(measured(reading)), (Years{2000}));
    EXPECT_TRUE(measured(straight_reading({})).boundaries.empty());
}

TEST(Measure, ThePithOnTheCoreGivesOneWidthForEachBoundary) {
    Reading reading = straight_reading({0.5, 2.0, 3.0});
    reading.last_year = Year(2023);
    reading.pith = pith_at(4.25);
    const RingSeries series = measured(reading);
    expect_widths(series, {1.5, 1.0, 1.25});
    EXPECT_EQ(ring_years(series).back(), 2021);
    reading.pith->inside = false;
    expect_widths(measured(reading), {1.5, 1.0});
}

TEST(Measure, ACracksLengthIsTakenOff) {
    Reading reading = straight_reading({1.0, 3.0, 5.0, 7.0});
    reading.breaks = {break_at(3.5, 4.1, Break::Kind::Crack), break_at(5.2, 5.3, Break::Kind::Crack),
                      break_at(6.0, 6.4, Break::Kind::Crack)};
    const RingSeries series = measured(reading);
    expect_widths(series, {2.0, 1.4, 1.5});
    EXPECT_NEAR(series.rings[1].along_path->value(), 1.4, 1e-9);
    EXPECT_NEAR(series.boundaries[3].s.value(), 7.0, 1e-9) << "places include breaks";
}

TEST(Measure, ACrackAtABoundaryIsSharedOutWhereItLies) {
    Reading reading = straight_reading({1.0, 3.0, 5.0});
    reading.breaks = {break_at(2.8, 3.3, Break::Kind::Crack)};
    expect_widths(measured(reading), {1.8, 1.7});
}

TEST(Measure, LostWoodLeavesTheRingThatItTouchesWithoutAWidthAndYearsGoOn) {
    Reading reading = straight_reading({1.0, 3.0, 5.0, 7.0});
    reading.last_year = Year(2010);
    reading.breaks = {break_at(3.5, 4.1, Break::Kind::LostWood)};
    const RingSeries series = measured(reading);
    expect_widths(series, {2.0, -1.0, 2.0});
    EXPECT_FALSE(series.rings[1].absent);
    EXPECT_FALSE(series.rings[1].along_path.has_value());
    EXPECT_EQ(ring_years(series), (Years{2010, 2009, 2008}));
}

TEST(Measure, RingsGoneWithLostWoodHaveTheirYears) {
    Reading reading = straight_reading({1.0, 3.0, 5.0, 7.0});
    reading.last_year = Year(2010);
    reading.breaks = {break_at(3.5, 4.1, Break::Kind::LostWood, 2)};
    const RingSeries series = measured(reading);
    expect_widths(series, {2.0, -1.0, -1.0, -1.0, 2.0});
    EXPECT_EQ(ring_years(series), (Years{2010, 2009, 2008, 2007, 2006}));
    EXPECT_EQ(boundary_years(series), (Years{2010, 2009, 2006, 2005}));
}

TEST(Measure, LostWoodOfUnknownNumberEndsTheSeriesAndWhatIsBeyondHasNoYear) {
    Reading reading = straight_reading({1.0, 3.0, 5.0, 7.0});
    reading.last_year = Year(2010);
    reading.breaks = {break_at(3.5, 4.1, Break::Kind::LostWood, std::nullopt)};
    reading.pith = pith_at(8.0);
    const RingSeries series = measured(reading);
    expect_widths(series, {2.0});
    EXPECT_EQ(boundary_years(series), (Years{2010, 2009, none, none}));
    EXPECT_NEAR(series.boundaries[3].s.value(), 7.0, 1e-9);
}

TEST(Measure, LostWoodWithoutLengthStillTouchesItsRing) {
    // Two pieces whose ends are pushed together.
    Reading reading = straight_reading({1.0, 3.0, 5.0});
    reading.breaks = {break_at(4.0, 4.0, Break::Kind::LostWood)};
    expect_widths(measured(reading), {2.0, -1.0});
}

TEST(Measure, ALocallyAbsentRingStandsWithWidthZero) {
    Reading reading = straight_reading({1.0, 3.0, 5.0, 7.0});
    reading.last_year = Year(2010);
    reading.absent_rings = {absent_at(2)};
    const RingSeries series = measured(reading);
    expect_widths(series, {2.0, 0.0, 2.0, 2.0});
    EXPECT_TRUE(series.rings[1].absent);
    EXPECT_EQ(ring_years(series), (Years{2010, 2009, 2008, 2007}));
    EXPECT_EQ(boundary_years(series), (Years{2010, 2008, 2007, 2006})) << "neighbouring boundaries step by 2";
}

TEST(Measure, SeveralAbsentRingsLieAtOneBoundaryAndAtTheFirst) {
    Reading reading = straight_reading({1.0, 3.0, 5.0});
    reading.last_year = Year(2010);
    reading.absent_rings = {absent_at(1), absent_at(2), absent_at(2)};
    const RingSeries series = measured(reading);
    expect_widths(series, {0.0, 2.0, 0.0, 0.0, 2.0});
    // The year given is that of the outermost ring with a width.
    EXPECT_EQ(ring_years(series), (Years{2011, 2010, 2009, 2008, 2007}));
    EXPECT_EQ(boundary_years(series), (Years{2010, 2007, 2006}));
    EXPECT_EQ(series.rings[4].number, 5);
}

TEST(Measure, ScalesMayDifferInXAndY) {
    Reading reading = straight_reading({0.0, 1.0});
    Calibration& scale = reading.calibrations["scan.tif"];
    scale.px_per_mm_y = 25.0;
    // A path that moves 3 mm in x and 4 mm in y, its boundaries square to it on the wood.
    const ImagePoint from{10.0, 20.0};
    const ImagePoint to{10.0 + 3.0 * scale.px_per_mm_x, 20.0 + 4.0 * scale.px_per_mm_y};
    reading.path.legs[0].points = {from, to};
    const double tangent = line_direction(std::atan2(3.0 * scale.px_per_mm_y, -4.0 * scale.px_per_mm_x));
    reading.boundaries[0].at = from;
    reading.boundaries[1].at = to;
    reading.boundaries[0].tangent = reading.boundaries[1].tangent = tangent;
    const RingSeries series = measured(reading);
    EXPECT_NEAR(series.rings[0].along_path->value(), 5.0, 1e-9);
    EXPECT_NEAR(series.rings[0].width->value(), 5.0, 1e-9);
}

TEST(Measure, ATiltedRingKeepsItsLengthAlongThePathBesideItsWidth) {
    Reading reading = straight_reading({1.0, 3.0});
    for (Boundary& boundary : reading.boundaries) {
        boundary.tangent = radians(60.0);
    }
    const RingSeries series = measured(reading);
    EXPECT_NEAR(series.rings[0].along_path->value(), 2.0, 1e-9);
    EXPECT_NEAR(series.rings[0].width->value(), 2.0 * std::cos(radians(30.0)), 1e-9);
}

TEST(Measure, AnUnfinishedOuterRingHasABreadthAndNoWidth) {
    Reading reading = straight_reading({1.0, 3.0});
    reading.last_year = Year(2010);
    reading.wood_edge = on_straight_path(0.6);
    reading.outer = OuterWood::Unfinished;
    const RingSeries series = measured(reading);
    expect_widths(series, {2.0});
    ASSERT_TRUE(series.outer_partial.has_value());
    EXPECT_NEAR(series.outer_partial->value(), 0.4, 1e-9);
    EXPECT_EQ(ring_years(series), (Years{2010}));
    reading.outer = OuterWood::Lost;
    EXPECT_FALSE(measured(reading).outer_partial.has_value());
}

TEST(Measure, WithoutALastYearRingsAreNumberedFromTheBark) {
    const RingSeries series = measured(straight_reading({1.0, 3.0, 5.0}));
    EXPECT_EQ(ring_years(series), (Years{none, none}));
    EXPECT_EQ(series.rings[0].number, 1);
    EXPECT_EQ(series.rings[1].number, 2);
    EXPECT_EQ(boundary_years(series), (Years{none, none, none}));
}

TEST(Measure, YearsRunThroughZero) {
    Reading reading = straight_reading({1.0, 2.0, 3.0, 4.0});
    reading.last_year = Year(1);
    EXPECT_EQ(ring_years(measured(reading)), (Years{1, 0, -1}));
}

TEST(Measure, LatewoodAndEarlywoodMakeUpTheWidth) {
    Reading reading = straight_reading({1.0, 3.0, 5.0});
    reading.boundaries[0].latewood = Millimetres(0.6);
    reading.boundaries[1].latewood = Millimetres(2.5); // more than the ring: not believed
    const RingSeries series = measured(reading);
    EXPECT_NEAR(series.rings[0].earlywood->value(), 1.4, 1e-9);
    EXPECT_FALSE(series.rings[1].latewood.has_value());
}

TEST(Measure, RefusesAReadingThatCantBeMeasured) {
    Reading reading = straight_reading({1.0, 3.0});
    reading.path.legs.clear();
    EXPECT_EQ(measure(reading).error().what, "the reading has no path");

    reading = straight_reading({1.0, 3.0});
    reading.calibrations.clear();
    EXPECT_EQ(measure(reading).error().line(), "scan.tif: the scan has no calibration; give its resolution");

    reading = straight_reading({1.0, 3.0});
    reading.path.legs[0].points.resize(1);
    EXPECT_FALSE(measure(reading).has_value());
    reading.path.legs[0].points.assign(3, ImagePoint{5.0, 5.0});
    EXPECT_FALSE(measure(reading).has_value());
}

} // namespace
} // namespace pithward::test
