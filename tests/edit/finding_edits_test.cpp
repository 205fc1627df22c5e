#include "libcore/edit/apply.h"
#include "libcore/edit/finding_edits.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward {
namespace {

Reading with_finding(ProposedChange change, std::optional<BoundaryId> about = std::nullopt) {
    Reading reading = test::straight_reading({1, 2, 4});
    Finding finding;
    finding.id = FindingId{5};
    finding.boundary = about;
    finding.reason = "the ring is twice as wide as its neighbours";
    finding.change = std::move(change);
    reading.findings.push_back(std::move(finding));
    return reading;
}

Reading settled(const Reading& reading, Finding::State state) {
    const auto edit = settle_finding(reading, FindingId{5}, state, "seen at 40 times", 100);
    EXPECT_TRUE(edit.has_value());
    const auto after = apply(reading, *edit);
    EXPECT_TRUE(after.has_value()) << (after ? "" : after.error().line());
    EXPECT_EQ(after->findings.at(0).state, state);
    EXPECT_EQ(after->findings[0].comment, "seen at 40 times");
    EXPECT_EQ(*apply(*after, inverse(*edit)), reading);
    return *after;
}

TEST(FindingEdits, TakingAProposedBoundaryPutsItInAndTakesItsCandidateAway) {
    Boundary proposed;
    proposed.at = test::on_straight_path(3);
    Reading reading = with_finding(ProposeBoundary{proposed});
    Candidate candidate;
    candidate.id = CandidateId{1};
    candidate.at = proposed.at;
    reading.not_annual.push_back(candidate);
    const Reading after = settled(reading, Finding::State::ProposalTaken);
    EXPECT_TRUE(after.not_annual.empty());
    ASSERT_EQ(after.boundaries.size(), 4U);
    EXPECT_EQ(after.boundaries[2].id, BoundaryId{100});
    EXPECT_EQ(after.boundaries[2].confirmation, Confirmation::LookedAt);
    EXPECT_EQ(settled(reading, Finding::State::KeptAsItIs).boundaries.size(), 3U);
}

TEST(FindingEdits, TakingAProposedRemovalMakesAFalseRing) {
    const Reading after =
        settled(with_finding(ProposeRemoval{BoundaryId{2}}, BoundaryId{2}), Finding::State::ProposalTaken);
    EXPECT_EQ(after.boundaries.size(), 2U);
    EXPECT_EQ(after.not_annual.at(0).reason, after.findings[0].reason);
}

TEST(FindingEdits, TakingAnAbsentRingOrABreakAddsIt) {
    EXPECT_EQ(
        settled(with_finding(ProposeAbsentRing{BoundaryId{2}}), Finding::State::ProposalTaken).absent_rings.at(0).at,
        BoundaryId{2});
    Break known = test::break_at(2.5, 3.0, Break::Kind::Crack);
    EXPECT_EQ(settled(with_finding(ProposeBreak{known}), Finding::State::ProposalTaken).breaks.at(0).id, BreakId{100});
    known.id = BreakId{1};
    Break lost = known;
    lost.kind = Break::Kind::LostWood;
    Reading reading = with_finding(ProposeBreak{lost});
    reading.breaks.push_back(known);
    EXPECT_EQ(settled(reading, Finding::State::ProposalTaken).breaks.at(0).kind, Break::Kind::LostWood);
}

TEST(FindingEdits, WhatIsDoneAlreadyIsNotDoneTwice) {
    // Taken, then returned by a second person, then taken again.
    Boundary proposed;
    proposed.at = test::on_straight_path(3);
    for (const ProposedChange& change :
         {ProposedChange(ProposeBoundary{proposed}), ProposedChange(ProposeRemoval{BoundaryId{2}}),
          ProposedChange(ProposeAbsentRing{BoundaryId{2}}),
          ProposedChange(ProposeBreak{test::break_at(2.5, 3.0, Break::Kind::Crack)})}) {
        const Reading taken = settled(with_finding(change), Finding::State::ProposalTaken);
        Reading returned = taken;
        returned.findings[0].state = Finding::State::Open;
        returned.findings[0].verdict = Verdict::Returned;
        EXPECT_EQ(settled(returned, Finding::State::ProposalTaken), taken);
    }
}

TEST(FindingEdits, WhoKeepsABoundaryHasLookedAtIt) {
    const Reading reading = with_finding(ProposeRemoval{BoundaryId{2}}, BoundaryId{2});
    EXPECT_EQ(settled(reading, Finding::State::KeptAsItIs).boundaries[1].confirmation, Confirmation::LookedAt);
    EXPECT_EQ(settled(reading, Finding::State::CannotBeTold).boundaries[1].confirmation, Confirmation::LookedAt);
    EXPECT_EQ(settled(reading, Finding::State::Open).boundaries[1].confirmation, Confirmation::None);
}

TEST(FindingEdits, AProposalAboutWhatIsGoneIsRefused) {
    const Reading reading = with_finding(ProposeRemoval{BoundaryId{99}});
    EXPECT_FALSE(settle_finding(reading, FindingId{5}, Finding::State::ProposalTaken, "", 100).has_value());
    EXPECT_FALSE(settle_finding(reading, FindingId{6}, Finding::State::KeptAsItIs, "", 100).has_value());
}

TEST(FindingEdits, AFindingIsNotedAndSettledInOneEdit) {
    Reading reading = test::straight_reading({1, 2, 4});
    Finding finding;
    finding.kind = FindingKind::Slip;
    finding.reason = "the other cores say so";
    finding.change = ProposeAbsentRing{BoundaryId{2}};
    const auto edit = settle_as(reading, finding, Finding::State::ProposalTaken, 100);
    ASSERT_TRUE(edit.has_value()) << edit.error().line();
    const Reading after = apply(reading, *edit).value();
    ASSERT_EQ(after.findings.size(), 1U);
    EXPECT_EQ(after.findings[0].id, FindingId{100});
    EXPECT_EQ(after.findings[0].state, Finding::State::ProposalTaken);
    EXPECT_EQ(after.absent_rings.at(0).at, BoundaryId{2});
    EXPECT_EQ(apply(after, inverse(*edit)).value(), reading);
}

TEST(FindingEdits, AFindingThatIsThereBecomesWhatIsNoted) {
    const Reading reading = with_finding(ProposeAbsentRing{BoundaryId{2}});
    Finding other = reading.findings[0];
    other.change = ProposeRemoval{BoundaryId{3}};
    const Reading noted = apply(reading, note_finding(reading, other, FindingId{100})).value();
    EXPECT_EQ(noted.findings, std::vector{other});
    const Reading settled =
        apply(reading, settle_as(reading, other, Finding::State::ProposalTaken, 100).value()).value();
    ASSERT_EQ(settled.findings.size(), 1U);
    EXPECT_EQ(settled.findings[0].id, FindingId{5});
    EXPECT_EQ(settled.boundaries.size(), 2U);
    EXPECT_TRUE(settled.absent_rings.empty());
}

} // namespace
} // namespace pithward
