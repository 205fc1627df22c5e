// A core that goes on on another scan: no ring is lost or gained where the two meet.
#include "libcore/edit/apply.h"
#include "libcore/edit/joined_readings.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

#include <set>

namespace pithward {
namespace {

using test::on_straight_path;
using test::straight_reading;

/// The outer part of a core: its wood from the bark to 15 mm.
Reading outer_part() {
    Reading reading = straight_reading({1, 3, 4.5, 8, 9, 15});
    reading.last_year = Year(2020);
    reading.outer = OuterWood::Complete;
    return reading;
}

/// The inner part on another scan, which shows again what is from 7.6 mm on.
Reading inner_part() {
    Reading reading = straight_reading({0.4, 1.4, 7.4, 12.4, 14.4});
    reading.path.legs.front().scan = "b.tif";
    reading.calibrations = {{"b.tif", reading.calibrations.at("scan.tif")}};
    Finding bark;
    bark.id = FindingId{1};
    bark.kind = FindingKind::BarkEnd;
    Finding false_ring;
    false_ring.id = FindingId{2};
    false_ring.kind = FindingKind::PossiblyFalse;
    false_ring.at = reading.boundaries[3].at;
    false_ring.boundary = reading.boundaries[3].id;
    false_ring.change = ProposeRemoval{reading.boundaries[3].id};
    reading.findings = {bark, false_ring};
    reading.pith = Pith{};
    reading.pith->at = on_straight_path(16.0);
    return reading;
}

Reading joined(const Reading& outer, const Reading& inner, const Meeting& meeting) {
    const auto edit = go_on_with(outer, inner, meeting, 1000);
    EXPECT_TRUE(edit.has_value()) << (edit ? "" : edit.error().line());
    const auto after = apply(outer, *edit);
    EXPECT_TRUE(after.has_value()) << (after ? "" : after.error().line());
    EXPECT_EQ(apply(*after, inverse(*edit)).value(), outer) << "what was joined can be taken apart";
    return *after;
}

TEST(JoinedReadings, MeetAtABoundaryThatBothShow) {
    const Reading outer = outer_part();
    const Reading inner = inner_part();
    const Reading whole = joined(outer, inner, MeetAtBoundary{outer.boundaries[4].id, inner.boundaries[1].id});
    const RingSeries series = test::measured(whole);
    test::expect_widths(series, {2, 1.5, 3.5, 1, 6, 5, 2});
    EXPECT_EQ(series.rings.front().year, Year(2020));
    EXPECT_EQ(series.rings.back().year, Year(2014));
    EXPECT_EQ(whole.pith, inner.pith);
    EXPECT_EQ(whole.outer, OuterWood::Complete);
    std::set<std::int64_t> ids;
    for (const Boundary& boundary : whole.boundaries) {
        EXPECT_TRUE(ids.insert(boundary.id.value).second);
    }
}

TEST(JoinedReadings, FindingsGoWithTheirBoundariesAndThoseOfTheInnersBarkGo) {
    const Reading outer = outer_part();
    const Reading inner = inner_part();
    const Reading whole = joined(outer, inner, MeetAtBoundary{outer.boundaries[5].id, inner.boundaries[2].id});
    ASSERT_EQ(whole.findings.size(), 1U);
    const Finding& finding = whole.findings.front();
    EXPECT_EQ(finding.kind, FindingKind::PossiblyFalse);
    EXPECT_EQ(finding.leg, 1U);
    const auto at = std::find_if(whole.boundaries.begin(), whole.boundaries.end(),
                                 [&](const Boundary& one) { return one.id == *finding.boundary; });
    ASSERT_NE(at, whole.boundaries.end());
    EXPECT_EQ(at->at, inner.boundaries[3].at);
    EXPECT_EQ(std::get<ProposeRemoval>(finding.change).boundary, at->id);
}

TEST(JoinedReadings, MeetAtACrackThatARingGoesOver) {
    Reading outer = outer_part();
    outer.path.legs.front().points.back() = on_straight_path(16.5);
    const Reading inner = inner_part(); // begins with its path, 0.4 mm before its first boundary
    Reading from_start = inner;
    from_start.path.legs.front().points.front() = on_straight_path(0.0);
    const Reading whole = joined(outer, from_start, MeetAtBreak{});
    test::expect_widths(test::measured(whole), {2, 1.5, 3.5, 1, 6, 1.9, 1, 6, 5, 2});
}

TEST(JoinedReadings, BeyondLostWoodOfAnUnknownNumberOfRingsTheSeriesFloats) {
    const Reading outer = outer_part();
    const Reading whole = joined(outer, inner_part(), MeetAtBreak{Break::Kind::LostWood, std::nullopt});
    const RingSeries series = test::measured(whole);
    EXPECT_EQ(series.rings.size(), 5U) << "what is beyond has no number and no year";
    EXPECT_EQ(whole.boundaries.size(), 11U);
}

TEST(JoinedReadings, APlaceThatLeavesNoRingIsRefused) {
    const Reading outer = outer_part();
    const Reading inner = inner_part();
    const auto fault = [&](BoundaryId here, BoundaryId there) {
        return go_on_with(outer, inner, MeetAtBoundary{here, there}, 1000).error().what;
    };
    EXPECT_EQ(fault(outer.boundaries.front().id, inner.boundaries[1].id), "no ring would be left on one of the scans");
    EXPECT_EQ(fault(outer.boundaries[3].id, inner.boundaries.back().id), "no ring would be left on one of the scans");
    EXPECT_EQ(fault(BoundaryId{77}, inner.boundaries[1].id), "the boundary that both show is not there any more");
    Reading other_wood = inner;
    other_wood.wood = WoodType::RingPorous;
    EXPECT_FALSE(go_on_with(outer, other_wood, MeetAtBreak{}, 1000).has_value());
}

} // namespace
} // namespace pithward
