#include "libcore/field/field_checks.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward {
namespace {

TEST(FieldChecks, LostOuterWoodIsAFinding) {
    Reading reading = test::straight_reading({1.0, 2.0, 3.0});
    Core core;
    core.outer = OuterWood::Lost;
    reading = with_field_checks(reading, test::measured(reading), Site{}, Tree{}, core);
    ASSERT_EQ(reading.findings.size(), 1U);
    const Finding& finding = reading.findings[0];
    EXPECT_EQ(finding.kind, FindingKind::FieldSheet);
    EXPECT_EQ(finding.boundary, reading.boundaries.front().id);
    EXPECT_NE(finding.reason.find("unknown number of outer rings is gone"), std::string::npos);
    EXPECT_NE(finding.reason.find("earliest possible last year"), std::string::npos);
}

TEST(FieldChecks, WhatWasSettledIsNotRaisedAgain) {
    Reading reading = test::straight_reading({1.0, 2.0, 3.0});
    Core core;
    core.outer = OuterWood::Lost;
    core.azimuth_deg = 10.0;
    Tree tree;
    tree.lean_azimuth_deg = 10.0;
    reading = with_field_checks(reading, test::measured(reading), Site{}, tree, core);
    ASSERT_EQ(reading.findings.size(), 2U);
    EXPECT_NE(reading.findings[0].id, reading.findings[1].id);
    reading.findings[0].state = Finding::State::KeptAsItIs;
    const Reading again = with_field_checks(reading, test::measured(reading), Site{}, tree, core);
    EXPECT_EQ(again, reading);
}

TEST(FieldChecks, ChangedFieldDataTakesOpenFindingsAwayAndBringsOthers) {
    Reading reading = test::straight_reading({1.0, 2.0, 3.0});
    FieldFacts before;
    before.core.outer = OuterWood::Lost;
    before.core.azimuth_deg = 10.0;
    before.tree.lean_azimuth_deg = 10.0;
    reading = with_field_checks(reading, test::measured(reading), before.site, before.tree, before.core);
    ASSERT_EQ(reading.findings.size(), 2U);
    FieldFacts after = before;
    after.core.outer = OuterWood::Complete; // mistyped; the lean was right
    const Reading mended = with_changed_field_facts(reading, test::measured(reading), before, after);
    ASSERT_EQ(mended.findings.size(), 1U);
    EXPECT_NE(mended.findings[0].reason.find("lean"), std::string::npos);
    EXPECT_EQ(with_changed_field_facts(mended, test::measured(reading), after, before).findings.size(), 2U);

    reading.findings[0].state = Finding::State::KeptAsItIs; // a person's answer is never taken away
    reading.findings[1].state = Finding::State::KeptAsItIs;
    EXPECT_EQ(with_changed_field_facts(reading, test::measured(reading), before, after).findings.size(), 2U);
}

TEST(FieldChecks, ASheetThatSaysNothingRaisesNothing) {
    const Reading reading = test::straight_reading({1.0, 2.0, 3.0});
    EXPECT_TRUE(with_field_checks(reading, test::measured(reading), Site{}, Tree{}, Core{}).findings.empty());
}

} // namespace
} // namespace pithward
