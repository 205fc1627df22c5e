#include "libcore/edit/apply.h"
#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/reading_edits.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward {
namespace {

using test::straight_reading;

TEST(BoundaryEdits, InBulkConfirmsWhatIsSureUnconfirmedAndWithoutOpenFinding) {
    Reading reading = straight_reading({1, 2, 3, 4});
    reading.boundaries[0].confidence = 0.95;
    reading.boundaries[1].confidence = 0.80;
    reading.boundaries[2].confidence = 0.99;
    reading.boundaries[3].confidence = 0.99;
    reading.boundaries[3].confirmation = Confirmation::LookedAt;
    Finding finding;
    finding.id = FindingId{1};
    finding.boundary = BoundaryId{3};
    reading.findings.push_back(finding);
    const Reading after = *apply(reading, confirm_above(reading, 0.9));
    EXPECT_EQ(after.boundaries[0].confirmation, Confirmation::InBulk);
    EXPECT_EQ(after.boundaries[1].confirmation, Confirmation::None);
    EXPECT_EQ(after.boundaries[2].confirmation, Confirmation::None);
    EXPECT_EQ(after.boundaries[3].confirmation, Confirmation::LookedAt);
    EXPECT_TRUE(changes_nothing(confirm_above(after, 0.9)));
}

TEST(BoundaryEdits, DeletingTakesTheAbsentRingsAlong) {
    Reading reading = straight_reading({1, 2, 3});
    reading.absent_rings = {test::absent_at(2), test::absent_at(3)};
    reading = *readied(reading);
    const Reading after = *apply(reading, *delete_boundary(reading, BoundaryId{2}));
    EXPECT_EQ(after.boundaries.size(), 2U);
    ASSERT_EQ(after.absent_rings.size(), 1U);
    EXPECT_EQ(after.absent_rings[0].at, BoundaryId{3});
}

TEST(BoundaryEdits, AFalseRingIsKeptWithItsReasonAndCanBeTakenBack) {
    const Reading reading = straight_reading({1, 2, 3});
    const Reading without =
        *apply(reading, *mark_as_false_ring(reading, BoundaryId{2}, CandidateId{20}, "soft on both sides"));
    EXPECT_EQ(without.boundaries.size(), 2U);
    ASSERT_EQ(without.not_annual.size(), 1U);
    EXPECT_EQ(without.not_annual[0].reason, "soft on both sides");
    EXPECT_EQ(without.not_annual[0].at, reading.boundaries[1].at);
    const Reading again = *apply(without, *take_candidate(without, CandidateId{20}, BoundaryId{21}));
    EXPECT_TRUE(again.not_annual.empty());
    EXPECT_EQ(again.boundaries.at(1).id, BoundaryId{21});
    EXPECT_EQ(again.boundaries[1].confirmation, Confirmation::LookedAt);
}

TEST(BoundaryEdits, MovingAndTurningMakeItTheAnalysts) {
    Reading reading = straight_reading({1, 2, 3});
    reading.boundaries[1].curve = {{1, 1}, {2, 2}};
    BoundaryPlace place;
    place.at = test::on_straight_path(2.25);
    place.sd = Millimetres(0.007);
    place.sd_assumed = false;
    const Reading moved = *apply(reading, *move_boundary(reading, BoundaryId{2}, place));
    EXPECT_EQ(moved.boundaries[1].origin, Origin::Analyst);
    EXPECT_EQ(moved.boundaries[1].confirmation, Confirmation::LookedAt);
    EXPECT_EQ(moved.boundaries[1].sd, Millimetres(0.007));
    EXPECT_TRUE(moved.boundaries[1].curve.empty());
    const Reading turned = *apply(reading, *turn_boundary(reading, BoundaryId{2}, 4.0));
    EXPECT_DOUBLE_EQ(turned.boundaries[1].tangent, line_direction(4.0));
    EXPECT_EQ(turned.boundaries[1].at, reading.boundaries[1].at);
}

TEST(BoundaryEdits, WhatIsNotThereIsRefusedInWords) {
    const Reading reading = straight_reading({1});
    EXPECT_EQ(confirm(reading, BoundaryId{5}).error().line(),
              "this ring boundary is not there any more; choose another one");
    EXPECT_FALSE(delete_boundary(reading, BoundaryId{5}).has_value());
    EXPECT_FALSE(add_absent_ring(reading, BoundaryId{5}, AbsentRingId{6}).has_value());
    EXPECT_FALSE(take_candidate(reading, CandidateId{5}, BoundaryId{6}).has_value());
}

TEST(BoundaryEdits, AnAbsentRingIsAYearOfWidthZero) {
    Reading reading = straight_reading({1, 2, 3});
    reading.last_year = Year(2020);
    const Reading after = *apply(reading, *add_absent_ring(reading, BoundaryId{2}, AbsentRingId{9}));
    test::expect_widths(test::measured(after), {1.0, 0.0, 1.0});
    EXPECT_EQ(test::ring_years(test::measured(after)), (std::vector<int>{2020, 2019, 2018}));
}

} // namespace
} // namespace pithward
