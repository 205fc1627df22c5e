// The search for slips on sites of the International Tree-Ring Data Bank (World Data Service for Paleoclimatology,
// NOAA; see SOURCES.md in the archive's folder). The mistakes are ours, the widths are not. A few sites, so that the
// test is quick; docs/accuracy.md has the figures for all.
#include "tests/outside/dating/slip_scores.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

class SlipTrial : public testing::Test {
protected:
    void SetUp() override {
        if (sites().empty()) {
            GTEST_SKIP() << "no archive files; set PITHWARD_ARCHIVE";
        }
    }
    static const std::vector<NamedSite>& sites() {
        static const auto all = archive_sites(3);
        return all;
    }
};

TEST_F(SlipTrial, FindsNineInTenMistakesAndAlarmsFewCleanSeries) {
    const SlipScores scores = score(run_trial(sites(), {}), whatever_told);
    EXPECT_GT(scores.mistaken, 100);
    EXPECT_GE(scores.found, 0.90);
    EXPECT_GE(scores.within_5, 0.80);
    EXPECT_GE(scores.exact, 0.55);
    EXPECT_GE(scores.range_holds, 0.87);
    EXPECT_LE(scores.median_range, 6);
    EXPECT_LE(scores.alarmed, 0.05); // Errors of the archive itself among them.
}

TEST_F(SlipTrial, FindsTwoMistakesInOneSeries) {
    TrialOptions options;
    options.mistakes = 2;
    const PairScores scores = score_pairs(run_trial(sites(), options), whatever_told);
    EXPECT_GE(scores.both_found, 0.80);
    EXPECT_GE(scores.both_within_5, 0.68);
}

TEST_F(SlipTrial, FindsJumpsThatNobodyMakesAsOftenAsWhatItStatesOfSlipsSaysIsFalse) {
    TrialOptions options;
    options.mistakes = 0;
    double stated_false = 0.0;
    for (const double probability : likeliest_of_each(run_trial(sites(), options))) {
        stated_false += 1.0 - probability;
    }
    double jumps = 0.0;
    for (const int jump : {9, 11, 13}) {
        options.slips.prior.jump = jump;
        const auto series = run_trial(sites(), options);
        const auto told = likeliest_of_each(series);
        EXPECT_LE(static_cast<double>(told.size()), 0.04 * static_cast<double>(series.size()));
        jumps += static_cast<double>(told.size()) / 3.0;
    }
    EXPECT_GE(jumps, 1.0); // Else it was no test.
    EXPECT_GE(stated_false, 0.5 * jumps);
    EXPECT_LE(stated_false, 2.0 * jumps);
}

} // namespace
} // namespace pithward::test
