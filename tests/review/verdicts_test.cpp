#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/document.h"
#include "libcore/edit/finding_edits.h"
#include "libcore/edit/reading_edits.h"
#include "libcore/review/standing.h"
#include "libcore/review/verdicts.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward::review {
namespace {

using State = Reading::State;

/// A reading of five boundaries with two open findings, and the people who work on it.
struct ReviewedReading : testing::Test {
    Document document;

    void SetUp() override {
        Reading reading = test::straight_reading({1.0, 2.0, 3.0, 4.0, 5.0});
        for (const std::int64_t id : {1, 2}) {
            Finding finding;
            finding.id = FindingId{id};
            finding.at = reading.boundaries[static_cast<std::size_t>(id)].at;
            finding.boundary = reading.boundaries[static_cast<std::size_t>(id)].id;
            reading.findings.push_back(finding);
        }
        document = Document::open(std::move(reading)).value();
    }
    void make(const Outcome<Edit>& edit, const std::string& who) {
        ASSERT_TRUE(edit.has_value()) << edit.error().line();
        const auto made = document.make(*edit, {who, "2024-06-30T12:00:00Z", "0.1.0"});
        ASSERT_TRUE(made.has_value()) << made.error().line();
    }
    void settle(std::int64_t id, const std::string& who) {
        make(settle_finding(reading(), FindingId{id}, Finding::State::KeptAsItIs, "clear", document.fresh_id()), who);
    }
    [[nodiscard]] const Reading& reading() const { return document.reading(); }
    [[nodiscard]] Standing now() const { return standing(reading(), document.log()); }
    [[nodiscard]] Outcome<Edit> pass_by(const std::string& who, OwnWork own = OwnWork::Refused) const {
        return pass(reading(), document.log(), who, own);
    }
};

TEST_F(ReviewedReading, GoesFromTheAnalystToTheSupervisorAndBack) {
    EXPECT_FALSE(pass_by("Sue").has_value()) << "nobody has marked it";
    settle(1, "Ida");
    settle(2, "Ida");
    make(mark(reading(), "Ida"), "Ida");
    EXPECT_EQ(reading().analyst, "Ida");
    EXPECT_FALSE(mark(reading(), "Ida").has_value());

    make(judge(reading(), FindingId{1}, Verdict::Passed, ""), "Sue");
    make(judge(reading(), FindingId{2}, Verdict::Returned, "look again"), "Sue");
    EXPECT_EQ(reading().state, State::Returned);
    EXPECT_EQ(reading().findings[0].comment, "clear");
    EXPECT_EQ(reading().findings[1].state, Finding::State::Open);
    EXPECT_EQ(reading().findings[1].comment, "look again");
    EXPECT_FALSE(pass_by("Sue").has_value());

    settle(2, "Ida");
    EXPECT_EQ(reading().findings[1].verdict, Verdict::None) << "it is to be judged anew";
    make(mark(reading(), "Ida"), "Ida");
    make(pass_by("Sue"), "Sue");
    EXPECT_EQ(reading().state, State::Passed);
    EXPECT_EQ(reading().findings[1].verdict, Verdict::Passed);
    EXPECT_EQ(told_people(now()), "marked by Ida, passed by Sue");
}

TEST_F(ReviewedReading, PassesOnlyWithNoOpenFinding) {
    settle(1, "Ida");
    make(mark(reading(), "Ida"), "Ida");
    const auto refused = pass_by("Sue");
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().what, "findings of this reading are open: 1");
    EXPECT_FALSE(judge(reading(), FindingId{2}, Verdict::Passed, "").has_value());
    EXPECT_FALSE(judge(reading(), FindingId{9}, Verdict::Passed, "").has_value());
}

TEST_F(ReviewedReading, IsPassedByAnotherPersonOrSaysSo) {
    settle(1, "Ida");
    settle(2, "Ida");
    make(mark(reading(), "Ida"), "Ida");
    EXPECT_FALSE(pass_by("Ida").has_value());
    make(pass_by("Ida", OwnWork::Allowed), "Ida");
    EXPECT_TRUE(now().passer_marked);
    EXPECT_EQ(told_people(now()), "passed by Ida, who marked it too");
}

TEST_F(ReviewedReading, TellsThatThePasserChangedIt) {
    settle(1, "Ida");
    make(mark(reading(), "Ida"), "Ida");
    settle(2, "Sue"); // looking and keeping is no change
    make(pass_by("Sue"), "Sue");
    EXPECT_EQ(told_people(now()), "marked by Ida, passed by Sue");
    ASSERT_TRUE(document.undo({"Sue", "", ""}).value());
    EXPECT_EQ(now().passed_by, "");
    make(delete_boundary(reading(), BoundaryId{4}), "Sue");
    make(pass_by("Sue"), "Sue");
    EXPECT_EQ(told_people(now()), "marked by Ida, passed by Sue, who changed it too");
}

TEST_F(ReviewedReading, ALaterEditSetsItBackToMarked) {
    settle(1, "Ida");
    settle(2, "Ida");
    make(mark(reading(), "Ida"), "Ida");
    make(pass_by("Sue"), "Sue");
    make(set_note(reading(), "sanded again"), "Udo");
    EXPECT_EQ(reading().state, State::Marked);
    EXPECT_EQ(now().marked_by, "Udo") << "what he did nobody has passed";
    EXPECT_EQ(now().passed_by, "");
    make(pass_by("Sue"), "Sue");
    make(send_back(reading()), "Sue");
    EXPECT_EQ(told_people(now()), "returned to Udo");
}

TEST_F(ReviewedReading, CountsWhatWasLookedAt) {
    settle(1, "Ida");
    make(confirm_above(reading(), 0.5), "Ida");
    const Standing one = now();
    EXPECT_EQ(one.boundaries, 5);
    EXPECT_EQ(one.looked_at, 1);
    EXPECT_EQ(one.in_bulk, 3) << "one has an open finding";
    EXPECT_EQ(one.open_findings, 1);
    EXPECT_EQ(told_counts(one), "5 boundaries: 1 looked at, 3 confirmed in bulk, 1 confirmed by nobody");
    EXPECT_EQ(told_people(one), "proposed by the program");
    EXPECT_EQ(together(std::vector{one, one}).in_bulk, 6);
}

} // namespace
} // namespace pithward::review
