// How far a core is and what comes next, from the field to the report.
#include "libcore/progress/core_progress.h"

#include <gtest/gtest.h>

namespace pithward::progress {
namespace {

using State = Reading::State;
using Kind = Objection::Kind;

CoreFacts measured(ReadingFacts reading) {
    return {.scan_named = true, .scan_there = true, .reading = reading, .has_years = true, .dating = DatingFacts{}};
}

TEST(CoreProgress, ACoreGoesFromItsScanToTheReportInThisOrder) {
    CoreFacts facts;
    EXPECT_EQ(core_progress(facts).next, Step::FindScan);
    facts.scan_named = true;
    EXPECT_EQ(core_progress(facts).next, Step::FindScan) << "its file is not there";
    facts.scan_there = true;
    EXPECT_EQ(core_progress(facts).next, Step::Measure);
    facts.reading = ReadingFacts{State::Proposed, 100, 0, 2};
    EXPECT_EQ(core_progress(facts).next, Step::Settle);
    facts.reading->open_findings = 0;
    EXPECT_EQ(core_progress(facts).next, Step::Confirm);
    facts.reading->confirmed = 100;
    facts.dating = DatingFacts{.slips = 0, .shift = 0, .can_be_dated = true};
    EXPECT_EQ(core_progress(facts).next, Step::Date) << "no years, but others that tell them";
    facts.has_years = true;
    facts.dating = DatingFacts{};
    EXPECT_EQ(core_progress(facts).next, Step::SayDone);
    facts.reading->state = State::Marked;
    EXPECT_EQ(core_progress(facts).next, Step::Review);
    facts.reading->state = State::Passed;
    EXPECT_EQ(core_progress(facts).next, Step::Report);
    EXPECT_TRUE(core_progress(facts).against.empty());
    for (const Stage stage : all_stages) {
        EXPECT_EQ(core_progress(facts).at(stage), HowFar::Done);
    }
}

TEST(CoreProgress, WhatIsReturnedGoesBackToItsAnalyst) {
    const CoreProgress progress = core_progress(measured({State::Returned, 100, 100, 1}));
    EXPECT_EQ(progress.next, Step::Settle);
    EXPECT_EQ(progress.at(Stage::Reviewed), HowFar::WantsLook);
    EXPECT_EQ(progress.against, (std::vector<Objection>{{Kind::Returned, 0}, {Kind::OpenFinding, 1}}));
    EXPECT_EQ(core_progress(measured({State::Returned, 100, 100, 0})).next, Step::SayDone);
}

TEST(CoreProgress, WhatIsOpenInAMarkedReadingIsForTheSecondPerson) {
    const CoreProgress progress = core_progress(measured({State::Marked, 100, 90, 1}));
    EXPECT_EQ(progress.next, Step::Review);
    EXPECT_EQ(progress.at(Stage::Confirmed), HowFar::WantsLook);
}

TEST(CoreProgress, ASlipIsLookedAtAlsoInAReadingThatWasPassed) {
    CoreFacts facts = measured({State::Passed, 100, 100, 0});
    facts.dating = DatingFacts{.slips = 1, .shift = 0, .can_be_dated = false};
    EXPECT_EQ(core_progress(facts).next, Step::Date);
    EXPECT_EQ(core_progress(facts).at(Stage::Dated), HowFar::WantsLook);
    facts.dating = DatingFacts{.slips = 0, .shift = -1, .can_be_dated = false};
    EXPECT_EQ(core_progress(facts).next, Step::Date);
    EXPECT_EQ(core_progress(facts).against, (std::vector<Objection>{{Kind::Shift, -1}}));
}

TEST(CoreProgress, YearsThatNobodyCanTellHoldNothingUp) {
    CoreFacts facts = measured({State::Proposed, 100, 100, 0});
    facts.has_years = false;
    EXPECT_EQ(core_progress(facts).next, Step::SayDone) << "too few other series";
    EXPECT_EQ(core_progress(facts).at(Stage::Dated), HowFar::NotYet);
    EXPECT_EQ(core_progress(facts).against, (std::vector<Objection>{{Kind::NoYears, 0}}));
}

TEST(CoreProgress, YearsThatNothingBearsOutAreNotCalledDated) {
    CoreFacts facts = measured({State::Passed, 100, 100, 0});
    facts.dating.reset();
    EXPECT_EQ(core_progress(facts).at(Stage::Dated), HowFar::Partly);
}

TEST(CoreProgress, AReadingWhoseScanHasGoneIsStillMeasured) {
    CoreFacts facts = measured({State::Proposed, 100, 40, 0});
    facts.scan_there = false;
    const CoreProgress progress = core_progress(facts);
    EXPECT_EQ(progress.at(Stage::Scanned), HowFar::WantsLook);
    EXPECT_EQ(progress.at(Stage::Measured), HowFar::Done);
    EXPECT_EQ(progress.at(Stage::Confirmed), HowFar::Partly);
    EXPECT_EQ(progress.against, (std::vector<Objection>{{Kind::ScanGone, 0}, {Kind::Unconfirmed, 60}}));
}

TEST(CoreProgress, EachStateIsKnownByItsWord) {
    for (const State state : {State::Proposed, State::Marked, State::Passed, State::Returned}) {
        EXPECT_EQ(state_of(word(state)), state);
    }
    EXPECT_EQ(state_of("unheard of"), State::Proposed);
}

TEST(SiteProgress, WhatMostWaitsForComesFirstAndAMissingScanHoldsNothingUp) {
    CoreFacts missing;
    CoreFacts there;
    there.scan_named = there.scan_there = true;
    const auto progress = [](const CoreFacts& facts) { return core_progress(facts); };
    std::vector cores{progress(missing), progress(measured({State::Marked, 9, 9, 0})), progress(there),
                      progress(there)};
    SiteProgress site = site_progress(cores);
    EXPECT_EQ(site.next, Step::Measure);
    EXPECT_EQ(site.waiting, 2);
    EXPECT_EQ(site.first, 2U);
    EXPECT_EQ(site.at(Stage::Scanned), 3);
    EXPECT_EQ(site.at(Stage::Measured), 1);
    cores.resize(2);
    EXPECT_EQ(site_progress(cores).next, Step::Review);
    cores[1] = progress(measured({State::Passed, 9, 9, 0}));
    EXPECT_EQ(site_progress(cores).next, Step::Report);
    cores.resize(1);
    EXPECT_EQ(site_progress(cores).next, Step::FindScan);
    EXPECT_EQ(site_progress({}).next, Step::FindScan);
    EXPECT_FALSE(site_progress({}).first.has_value());
}

} // namespace
} // namespace pithward::progress
