#include "libcore/edit/apply.h"
#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/reading_edits.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

#include <limits>

namespace pithward {
namespace {

using test::on_straight_path;
using test::straight_reading;

std::string why_refused(const Reading& reading, const Edit& edit) {
    const auto after = apply(reading, edit);
    EXPECT_FALSE(after.has_value());
    if (!after) {
        EXPECT_FALSE(after.error().remedy.empty());
    }
    return after ? "" : after.error().what;
}

BoundaryPlace at(double s_mm) {
    BoundaryPlace place;
    place.at = on_straight_path(s_mm);
    return place;
}

TEST(Apply, AnAddedBoundaryStandsInPathOrder) {
    const auto after = apply(straight_reading({1, 2, 4}), add_boundary(at(3), BoundaryId{9}));
    ASSERT_TRUE(after.has_value()) << after.error().line();
    EXPECT_EQ(after->boundaries.at(2).id, BoundaryId{9});
    EXPECT_EQ(after->boundaries[2].origin, Origin::Analyst);
    EXPECT_EQ(after->boundaries[2].confirmation, Confirmation::LookedAt);
    EXPECT_EQ(test::widths_mm(test::measured(*after)).size(), 3U);
}

TEST(Apply, ANumberThatIsTakenOrNoneIsRefused) {
    const Reading reading = straight_reading({1, 2});
    EXPECT_EQ(why_refused(reading, add_boundary(at(3), BoundaryId{2})),
              "a ring boundary of this number is there already");
    EXPECT_EQ(why_refused(reading, add_boundary(at(3), BoundaryId{0})),
              "a ring boundary of this number is there already");
}

TEST(Apply, WhatHasChangedSinceIsRefused) {
    const Reading reading = straight_reading({1, 2});
    const Edit first = *confirm(reading, BoundaryId{1});
    const Edit second = *annotate(reading, BoundaryId{1}, "cracked");
    const Reading after = *apply(reading, first);
    EXPECT_EQ(why_refused(after, second), "the ring boundary is no longer what it was when this edit was begun");
    EXPECT_EQ(why_refused(after, *delete_boundary(reading, BoundaryId{1})),
              "the ring boundary is no longer what it was when this edit was begun");
    const Reading dated = *apply(reading, set_last_year(reading, Year(2020)));
    EXPECT_EQ(why_refused(dated, set_last_year(reading, Year(2021))),
              "the reading is no longer what it was when this edit was begun");
    const Calibration scale{40.0, 40.0, 0.001, Calibration::Source::Given};
    EXPECT_EQ(why_refused(*apply(reading, change_calibration(reading, "scan.tif", scale)),
                          change_calibration(reading, "scan.tif", std::nullopt)),
              "the scale is no longer what it was when this edit was begun");
}

TEST(Apply, ABoundaryDoesNotPassItsNeighbour) {
    const Reading reading = straight_reading({1, 2, 3});
    EXPECT_TRUE(apply(reading, *move_boundary(reading, BoundaryId{2}, at(2.9))).has_value());
    EXPECT_EQ(why_refused(reading, *move_boundary(reading, BoundaryId{2}, at(3.1))),
              "the ring boundary would pass its neighbour on the path");
    EXPECT_EQ(why_refused(reading, *move_boundary(reading, BoundaryId{1}, at(2.1))),
              "the ring boundary would pass its neighbour on the path");
}

TEST(Apply, APathThatTurnsTheOrderIsRefusedAndOneThatKeepsItIsNot) {
    const Reading reading = straight_reading({1, 2, 3});
    Path bent = reading.path;
    bent.legs[0].points.insert(bent.legs[0].points.begin() + 1, {600.0, 220.0});
    EXPECT_TRUE(apply(reading, change_path(reading, bent)).has_value());
    Path turned = reading.path;
    std::swap(turned.legs[0].points.front(), turned.legs[0].points.back());
    EXPECT_EQ(why_refused(reading, change_path(reading, turned)),
              "ring boundaries would change their order along this path");
}

TEST(Apply, NothingIsLeftHanging) {
    Reading reading = straight_reading({1, 2, 3});
    reading = *apply(reading, *add_absent_ring(reading, BoundaryId{2}, AbsentRingId{10}));
    EXPECT_EQ(why_refused(reading, {Removed<Boundary>{reading.boundaries[1]}}),
              "a locally absent ring would stand at a boundary that is not there");
    EXPECT_EQ(why_refused(reading, change_path(reading, Path{})),
              "a ring boundary would lie on a leg that the path does not have");
    BoundaryPlace off = at(3.5);
    off.leg = 1;
    EXPECT_EQ(why_refused(reading, add_boundary(off, BoundaryId{11})),
              "a ring boundary would lie on a leg that the path does not have");
    Path two = reading.path;
    two.legs.push_back({"scan.tif", {{0, 0}, {1, 1}}, JoinedAtBoundary{BoundaryId{3}, BoundaryId{12}}});
    EXPECT_EQ(why_refused(reading, change_path(reading, two)),
              "two legs of the path would not be joined at a boundary or break of both");
    BoundaryPlace second = at(0);
    second.leg = 1;
    const Edit both{EditGroup{"Step sideways", {change_path(reading, two), add_boundary(second, BoundaryId{12})}}};
    const auto after = apply(reading, both);
    ASSERT_TRUE(after.has_value()) << after.error().line();
    EXPECT_EQ(why_refused(*after, {Removed<Boundary>{after->boundaries.at(2)}}),
              "two legs of the path would not be joined at a boundary or break of both");
    EXPECT_EQ(*apply(*after, inverse(both)), reading);
}

TEST(Apply, AGroupIsDoneWholeOrNotAtAll) {
    const Reading reading = straight_reading({1, 2});
    const Edit group{EditGroup{"two", {*confirm(reading, BoundaryId{1}), add_boundary(at(3), BoundaryId{2})}}};
    EXPECT_FALSE(apply(reading, group).has_value());
    EXPECT_EQ(reading, straight_reading({1, 2}));
}

TEST(Apply, WhatIsNoNumberIsRefused) {
    constexpr double no_number = std::numeric_limits<double>::quiet_NaN();
    const Reading reading = straight_reading({1, 2});
    BoundaryPlace place;
    place.at = {no_number, 1.0};
    EXPECT_EQ(why_refused(reading, add_boundary(place, BoundaryId{5})),
              "a measure of the ring boundary is no finite number");
    EXPECT_EQ(why_refused(reading, change_calibration(reading, "scan.tif",
                                                      Calibration{0.0, 1.0, 0.0, Calibration::Source::Given})),
              "a measure of the scale is no finite number");
}

TEST(Readied, GivesNumbersAndOrderAndKeepsWhatIsThere) {
    Reading reading = straight_reading({3, 1, 2});
    reading.boundaries[0].id = BoundaryId{7};
    reading.boundaries[1].id = {};
    reading.boundaries[2].id = BoundaryId{7};
    const Reading ready = *readied(reading);
    ASSERT_EQ(ready.boundaries.size(), 3U);
    EXPECT_EQ(ready.boundaries[0].at, on_straight_path(1));
    EXPECT_EQ(ready.boundaries[2].id, BoundaryId{7});
    EXPECT_NE(ready.boundaries[0].id, ready.boundaries[1].id);
    EXPECT_EQ(*readied(ready), ready);
}

} // namespace
} // namespace pithward
