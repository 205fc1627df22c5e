#include "libcore/edit/document.h"
#include "libcore/edit/finding_edits.h"
#include "libcore/review/about_finding.h"
#include "libcore/review/bring_back.h"
#include "libcore/review/verdicts.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward::review {
namespace {

EditStamp by(const std::string& who) {
    return {who, "2024-06-30T12:00:00.000Z", "0.1.0"};
}

/// Five boundaries at 1, 2, ... mm, candidates turned down at 1.5, 2.5, 2.75 and 3.5 mm, a finding on the boundary at
/// 3 mm.
Reading doubtful_reading() {
    Reading reading = test::straight_reading({1, 2, 3, 4, 5});
    std::int64_t id = 100;
    for (const double s_mm : {1.5, 2.5, 2.75, 3.5}) {
        Candidate candidate;
        candidate.id = CandidateId{++id};
        candidate.at = test::on_straight_path(s_mm);
        reading.not_annual.push_back(candidate);
    }
    Finding finding;
    finding.id = FindingId{200};
    finding.kind = FindingKind::PossiblyFalse;
    finding.at = reading.boundaries[2].at;
    finding.boundary = reading.boundaries[2].id;
    reading.findings.push_back(finding);
    return reading;
}

std::vector<std::int64_t> ids_of(const std::vector<Candidate>& candidates) {
    std::vector<std::int64_t> ids;
    ids.reserve(candidates.size());
    for (const Candidate& one : candidates) {
        ids.push_back(one.id.value);
    }
    return ids;
}

TEST(AboutFinding, CandidatesBetweenTheNextBoundariesOnEitherSideAreNamed) {
    Reading reading = doubtful_reading();
    EXPECT_EQ(ids_of(candidates_about(reading, reading.findings[0])), (std::vector<std::int64_t>{102, 103, 104}));
    Finding stretch; // between two boundaries, about none
    stretch.at = test::on_straight_path(2.2);
    stretch.to = test::on_straight_path(2.8);
    EXPECT_EQ(ids_of(candidates_about(reading, stretch)), (std::vector<std::int64_t>{102, 103}));
    reading.boundaries.clear();
    EXPECT_EQ(candidates_about(reading, stretch).size(), 4U);
}

TEST(AboutFinding, WhoSettledItIsWhoDidSoLast) {
    Document document = Document::open(doubtful_reading()).value();
    const FindingId id{200};
    EXPECT_EQ(settled_by(document.log(), id), std::nullopt);
    const auto settle = [&](Finding::State state, const std::string& who) {
        ASSERT_TRUE(document.make(*settle_finding(document.reading(), id, state, "", document.fresh_id()), by(who)));
    };
    settle(Finding::State::KeptAsItIs, "Ida");
    EXPECT_EQ(settled_by(document.log(), id), "Ida");
    settle(Finding::State::CannotBeTold, "Ben");
    EXPECT_EQ(settled_by(document.log(), id), "Ben");
    ASSERT_TRUE(document.undo(by("Ben")));
    EXPECT_EQ(settled_by(document.log(), id), "Ida");
}

TEST(BringBack, WhatWasMeasuredComesBackAndNothingIsPassedByIt) {
    Document document = Document::open(doubtful_reading()).value();
    const FindingId id{200};
    const auto make = [&](const Outcome<Edit>& edit, const std::string& who) {
        ASSERT_TRUE(edit.has_value()) << edit.error().line();
        ASSERT_TRUE(document.make(*edit, by(who)));
    };
    make(settle_finding(document.reading(), id, Finding::State::KeptAsItIs, "", document.fresh_id()), "Ida");
    make(mark(document.reading(), "Ida"), "Ida");
    make(pass(document.reading(), document.log(), "Sue"), "Sue");
    const Reading passed = document.reading();
    make(settle_finding(document.reading(), id, Finding::State::CannotBeTold, "", document.fresh_id()), "Ida");
    ASSERT_EQ(document.reading().state, Reading::State::Marked);
    make(bring_back(document.reading(), passed, "Bring back"), "Ida");
    EXPECT_EQ(document.reading().boundaries, passed.boundaries);
    EXPECT_EQ(document.reading().findings[0].state, Finding::State::KeptAsItIs);
    EXPECT_EQ(document.reading().findings[0].verdict, Verdict::None);
    EXPECT_EQ(document.reading().state, Reading::State::Marked);
    EXPECT_EQ(document.log().size(), 5U) << "one edit, which can be undone";
}

} // namespace
} // namespace pithward::review
