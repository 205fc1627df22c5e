#include "libcore/dating/slips/slip_finding.h"

#include <gtest/gtest.h>

namespace pithward::dating {
namespace {

DoubtfulPlace place_at(double x, int ring, ProposedChange change) {
    DoubtfulPlace place;
    place.ring = Year(ring);
    place.at = {x, 0.0};
    place.too_few = !std::holds_alternative<ProposeRemoval>(change);
    place.change = std::move(change);
    place.reason = "seen";
    return place;
}

Finding noted(std::int64_t id, const Slip& slip, const DoubtfulPlace& place, Finding::State state) {
    Finding finding = slip_finding(slip, {place, slip.ring_year(), 0.6});
    finding.id = FindingId{id};
    finding.state = state;
    return finding;
}

const Slip missing{Slip::Kind::RingMissing, 1930, 1928, 1931, 0.97};
const Slip doubled{Slip::Kind::RingTooMany, 1890, 1889, 1890, 0.97};
const DoubtfulPlace weak = place_at(10.0, 1930, ProposeBoundary{});
const DoubtfulPlace absent = place_at(11.0, 1929, ProposeAbsentRing{BoundaryId{7}});
const DoubtfulPlace false_one = place_at(30.0, 1891, ProposeRemoval{BoundaryId{9}});

TEST(SlipFinding, TellsWhatTheOthersSayWhatTheWoodShowsAndWhatToDo) {
    const Finding finding = slip_finding(missing, {weak, 1929, 0.6});
    EXPECT_EQ(finding.kind, FindingKind::Slip);
    EXPECT_EQ(finding.at, weak.at);
    EXPECT_EQ(finding.reason, "the other cores of the site show that ring 1929 is missing (1927 to 1930); seen");
    EXPECT_EQ(words_of({Slip::Kind::RingTooMany, 1890, 1890, 1890, 0.97}), "ring 1890 is counted twice (1890 alone)");
    EXPECT_EQ(finding.proposal, "put a boundary in here, the inner one of ring 1929");
    EXPECT_EQ(finding.probability, 0.6);
    EXPECT_FALSE(finding.boundary);
    EXPECT_EQ(slip_finding(doubled, {false_one, 1890, 0.9}).boundary, BoundaryId{9});
    EXPECT_EQ(slip_finding(missing, {absent, 1929, 0.9}).proposal, "mark ring 1929 as locally absent");
}

TEST(SlipFinding, IsKnownAgainAtAnotherPlaceOfTheSameSlip) {
    const std::vector slips{missing, doubled};
    const std::vector wood{weak, absent, false_one};
    using State = Finding::State;
    const auto known = [&](const std::vector<Finding>& findings) {
        return findings_of_slips(slips, 0, wood, findings);
    };
    const auto at_another = known({noted(3, missing, absent, State::KeptAsItIs)});
    EXPECT_EQ(at_another[0], FindingId{3});
    EXPECT_FALSE(at_another[1]) << "it puts a ring in, and this one wants one out";
    EXPECT_EQ(known({noted(4, doubled, false_one, State::Open)})[1], FindingId{4});
    EXPECT_EQ(known({noted(5, missing, weak, State::Open), noted(6, missing, absent, State::CannotBeTold)})[0],
              FindingId{6})
        << "the latest";
}

TEST(SlipFinding, IsNotTakenForAnother) {
    const std::vector slips{missing};
    const std::vector wood{weak, false_one};
    const auto known = [&](const Finding& finding) {
        return findings_of_slips(slips, 0, wood, std::vector{finding})[0].has_value();
    };
    EXPECT_FALSE(known(noted(1, missing, weak, Finding::State::ProposalTaken))) << "it was done, so this is a new one";
    Finding other = noted(1, missing, weak, Finding::State::Open);
    other.kind = FindingKind::PossiblyOverlooked;
    EXPECT_FALSE(known(other));
    const DoubtfulPlace far = place_at(90.0, 1850, ProposeBoundary{});
    const std::vector wide{weak, far};
    EXPECT_FALSE(findings_of_slips(slips, 0, wide, std::vector{noted(1, missing, far, Finding::State::Open)})[0]);
    EXPECT_TRUE(findings_of_slips(slips, 80, wide, std::vector{noted(1, missing, far, Finding::State::Open)})[0])
        << "the reading's years are 80 too early";
}

} // namespace
} // namespace pithward::dating
