#include "libcore/edit/apply.h"
#include "libcore/edit/path_edits.h"
#include "libcore/edit/path_shapes.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward {
namespace {

using test::on_straight_path;
using test::straight_reading;

/// Boundaries square to a straight path of 40 mm, the outermost ring that of 2020.
Reading dated_reading() {
    Reading reading = straight_reading({1, 3, 4.5, 8, 9, 15});
    reading.last_year = Year(2020);
    return reading;
}

ImagePoint aside(double s_mm, double px) {
    return on_straight_path(s_mm) + ImagePoint{0.0, px};
}

Reading bent(const Reading& reading, const Path& path) {
    const auto edit = reroute(reading, path, "bend");
    EXPECT_TRUE(edit.has_value()) << (edit ? "" : edit.error().line());
    const auto after = apply(reading, *edit);
    EXPECT_TRUE(after.has_value()) << (after ? "" : after.error().line());
    EXPECT_EQ(apply(*after, inverse(*edit)).value(), reading) << "what was bent can be bent back";
    return *after;
}

TEST(PathEdits, ABendLosesNoRingAndLeavesTheWidths) {
    const Reading before = dated_reading();
    const Path path = *with_vertex_added(before.path, {0, 1}, aside(8, 40)); // at a boundary: no ring holds the bend
    const Reading after = bent(before, path);
    const RingSeries series = test::measured(after);
    // The boundaries are straight and alike in direction, so the widths square to them don't know of the path.
    test::expect_widths(series, {2, 1.5, 3.5, 1, 6});
    EXPECT_EQ(test::ring_years(series), test::ring_years(test::measured(before)));
    for (const Ring& ring : series.rings) {
        EXPECT_GE(ring.along_path->value(), ring.width->value());
    }
    const Reading straight = bent(after, *without_vertex(after.path, {0, 1}));
    test::expect_widths(test::measured(straight), {2, 1.5, 3.5, 1, 6});
}

TEST(PathEdits, BoundariesFollowTheirTracedCurves) {
    Reading before = straight_reading({2, 4});
    const ImagePoint at = on_straight_path(4);
    before.boundaries[1].curve = {at + ImagePoint{30, -100}, at, at + ImagePoint{-30, 100}};
    const Path path = *with_vertex_moved(before.path, {0, 1}, aside(40, 100));
    const Reading after = bent(before, path);
    EXPECT_NEAR(after.boundaries[1].at.x, at.x - 0.3 * (after.boundaries[1].at.y - at.y), 1e-6);
    EXPECT_GT(after.boundaries[1].at.y, at.y + 5.0);
}

TEST(PathEdits, AShorterPathKeepsTheYearsOfWhatIsLeft) {
    Reading before = dated_reading();
    before.absent_rings = {test::absent_at(3)};
    before = *readied(before);
    const auto years = test::boundary_years(test::measured(before));
    const Reading after = bent(before, *with_vertex_moved(before.path, {0, 0}, on_straight_path(4)));
    ASSERT_EQ(after.boundaries.size(), 4U);
    EXPECT_EQ(test::boundary_years(test::measured(after)), std::vector<int>(years.begin() + 2, years.end()));
    EXPECT_FALSE(after.wood_edge);
    const Reading inner = bent(before, *with_vertex_moved(before.path, {0, 1}, on_straight_path(8.5)));
    EXPECT_EQ(test::boundary_years(test::measured(inner)), std::vector<int>(years.begin(), years.begin() + 4));
}

TEST(PathEdits, APathThatGoesBackIsRefused) {
    const Reading before = dated_reading();
    Path path = before.path;
    path.legs[0].points = {on_straight_path(10), on_straight_path(0)};
    const auto edit = reroute(before, path, "turn");
    ASSERT_FALSE(edit);
    EXPECT_NE(edit.error().what.find("order"), std::string::npos);
}

TEST(PathEdits, VerticesThatAreNotThereAreRefused) {
    const Path path = dated_reading().path;
    EXPECT_FALSE(with_vertex_moved(path, {1, 0}, {}));
    EXPECT_FALSE(with_vertex_added(path, {0, 3}, {}));
    EXPECT_FALSE(without_vertex(path, {0, 0})) << "two ends have to stay";
    EXPECT_FALSE(extended_to(path, "other.tif", {}));
    EXPECT_EQ(extended_to(path, "scan.tif", on_straight_path(45))->legs[0].points.back(), on_straight_path(45));
    EXPECT_EQ(extended_to(path, "scan.tif", on_straight_path(-5))->legs[0].points.front(), on_straight_path(-5));
}

TEST(PathEdits, SteppingAsideNeitherLosesNorGainsARing) {
    Reading before = dated_reading();
    before.absent_rings = {test::absent_at(3)};
    before.breaks = {test::break_at(10, 11, Break::Kind::Crack)};
    before.breaks[0].id = BreakId{1};
    before = *readied(before);
    const RingSeries old = test::measured(before);
    const auto edit = step_aside(before, BoundaryId{3}, aside(4.4, 60), BoundaryId{50});
    ASSERT_TRUE(edit.has_value()) << edit.error().line();
    const Reading after = *apply(before, *edit);
    ASSERT_EQ(after.path.legs.size(), 2U);
    EXPECT_EQ(after.path.legs[0].points.back(), on_straight_path(4.5));
    EXPECT_EQ(after.path.legs[1].points.front(), aside(4.5, 60));
    EXPECT_EQ(after.path.legs[1].points.back(), aside(40, 60));
    const RingSeries series = test::measured(after);
    EXPECT_EQ(test::ring_years(series), test::ring_years(old));
    test::expect_widths(series, test::widths_mm(old));
    EXPECT_EQ(apply(after, inverse(*edit)).value(), before);

    // And on again from the second leg, further in.
    const auto again = step_aside(after, BoundaryId{5}, aside(9, -10), BoundaryId{60});
    ASSERT_TRUE(again.has_value()) << again.error().line();
    const RingSeries twice = test::measured(*apply(after, *again));
    EXPECT_EQ(test::ring_years(twice), test::ring_years(old));
    test::expect_widths(twice, test::widths_mm(old));
}

TEST(PathEdits, StepsAsideOnlyWhereTheRingsGoOn) {
    const Reading reading = dated_reading();
    EXPECT_FALSE(step_aside(reading, BoundaryId{6}, aside(15, 20), BoundaryId{50})) << "innermost";
    EXPECT_FALSE(step_aside(reading, BoundaryId{77}, aside(15, 20), BoundaryId{50})) << "not there";
}

TEST(PathEdits, LegsStayJoinedWhenOneIsBent) {
    const Reading before = dated_reading();
    const Reading legs = *apply(before, *step_aside(before, BoundaryId{3}, aside(4.5, 60), BoundaryId{50}));
    const Reading after = bent(legs, *with_vertex_moved(legs.path, {1, 0}, aside(4.2, 90)));
    EXPECT_EQ(test::ring_years(test::measured(after)), test::ring_years(test::measured(before)));
    test::expect_widths(test::measured(after), {2, 1.5, 3.5, 1, 6});
}

TEST(PathEdits, WhatALongerPathMeetsComesInAndTheYearsStay) {
    const Reading before = dated_reading();
    const ImagePoint old_bark = before.path.legs[0].points.front();
    const Reading longer = *rerouted(before, *extended_to(before.path, "scan.tif", on_straight_path(-5)));
    // Read anew the same wood gives the same boundaries, and two further out.
    Reading read = straight_reading({-3, -1, 1.01, 3, 4.5, 8.02, 9, 15});
    read.outer = OuterWood::Complete;
    const Reading more = with_what_is_beyond(longer, read, PathEnd::Bark, old_bark, 100);
    ASSERT_TRUE(readied(more));
    EXPECT_EQ(more.boundaries.size(), 8U);
    EXPECT_EQ(more.outer, OuterWood::Complete);
    EXPECT_EQ(test::ring_years(test::measured(more)), (std::vector<int>{2022, 2021, 2020, 2019, 2018, 2017, 2016}));

    const Reading inner = *rerouted(before, *extended_to(before.path, "scan.tif", on_straight_path(50)));
    const Reading deeper = with_what_is_beyond(inner, straight_reading({1, 3, 4.5, 8, 9, 15, 42, 45}), PathEnd::Inner,
                                               on_straight_path(40), 100);
    EXPECT_EQ(deeper.boundaries.size(), 8U);
    EXPECT_EQ(test::ring_years(test::measured(deeper)).front(), 2020);
}

} // namespace
} // namespace pithward
