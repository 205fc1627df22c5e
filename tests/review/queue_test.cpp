#include "libcore/review/queue.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward::review {
namespace {

using State = Reading::State;

Finding finding_at(std::int64_t id, double s_mm, FindingKind kind, double probability) {
    Finding finding;
    finding.id = FindingId{id};
    finding.kind = kind;
    finding.at = test::on_straight_path(s_mm);
    finding.probability = probability;
    return finding;
}

/// Ten boundaries at 1, 2, ... mm.
Reading ten_rings(std::int64_t id, State state) {
    Reading reading = test::straight_reading({1, 2, 3, 4, 5, 6, 7, 8, 9, 10});
    reading.id = ReadingId{id};
    reading.state = state;
    return reading;
}

std::vector<std::pair<std::int64_t, std::int64_t>> names(const std::vector<Waiting>& list) {
    std::vector<std::pair<std::int64_t, std::int64_t>> all;
    all.reserve(list.size());
    for (const Waiting& one : list) {
        all.emplace_back(one.reading.value, one.finding.value);
    }
    return all;
}

using Names = std::vector<std::pair<std::int64_t, std::int64_t>>;

TEST(Queue, ARingTooManyOrTooFewTouchesAllThatLieFurtherIn) {
    const Reading reading = ten_rings(1, State::Marked);
    Finding finding = finding_at(1, 2.5, FindingKind::PossiblyOverlooked, 0.7);
    EXPECT_DOUBLE_EQ(rings_at_stake(reading, finding), 0.7 * 9);
    finding.state = Finding::State::KeptAsItIs;
    EXPECT_DOUBLE_EQ(rings_at_stake(reading, finding), 0.7 * 9);
    finding.state = Finding::State::ProposalTaken;
    EXPECT_DOUBLE_EQ(rings_at_stake(reading, finding), (1 - 0.7) * 9);
    EXPECT_DOUBLE_EQ(rings_at_stake(reading, finding_at(2, 9.5, FindingKind::PossiblyFalse, 0.5)), 0.5 * 2);
    EXPECT_DOUBLE_EQ(rings_at_stake(reading, finding_at(3, 1, FindingKind::BarkEnd, 0.1)), 0.1 * 11);
    EXPECT_DOUBLE_EQ(rings_at_stake(reading, finding_at(4, 1, FindingKind::Pith, 0.5)), 0.5);
}

TEST(Queue, TheWorstOfTheWholeProjectComesFirst) {
    Reading one = ten_rings(1, State::Marked);
    one.findings = {finding_at(1, 9.5, FindingKind::Doubtful, 0.5), finding_at(2, 1.5, FindingKind::Doubtful, 0.5)};
    Reading two = ten_rings(2, State::Marked);
    two.findings = {finding_at(1, 5.5, FindingKind::Slip, 0.9), finding_at(2, 9.5, FindingKind::Doubtful, 0.5)};
    EXPECT_EQ(names(supervisors_queue(std::vector{one, two})), (Names{{2, 1}, {1, 2}, {1, 1}, {2, 2}}));
    EXPECT_TRUE(analysts_list(std::vector{one, two}).empty());
}

TEST(Queue, EachPersonSeesWhatWaitsForThem) {
    Reading returned = ten_rings(1, State::Returned);
    returned.findings = {finding_at(1, 9.5, FindingKind::Doubtful, 0.1), finding_at(2, 1.5, FindingKind::Doubtful, 0.9),
                         finding_at(3, 2.5, FindingKind::Doubtful, 0.9),
                         finding_at(4, 3.5, FindingKind::Doubtful, 0.9)};
    returned.findings[0].verdict = Verdict::Returned;
    returned.findings[2].state = Finding::State::KeptAsItIs; // settled before the return, and not judged
    returned.findings[3].state = Finding::State::KeptAsItIs;
    returned.findings[3].verdict = Verdict::Passed;
    Reading proposed = ten_rings(2, State::Proposed);
    proposed.findings = {finding_at(1, 1.5, FindingKind::Doubtful, 1.0)};
    Reading passed = ten_rings(3, State::Passed);
    passed.findings = {finding_at(1, 1.5, FindingKind::Doubtful, 1.0)};
    passed.findings[0].state = Finding::State::KeptAsItIs;
    const std::vector all{returned, proposed, passed};
    EXPECT_EQ(names(supervisors_queue(all)), (Names{{1, 3}}));
    EXPECT_EQ(names(analysts_list(all)), (Names{{1, 1}, {2, 1}, {1, 2}}));
}

} // namespace
} // namespace pithward::review
