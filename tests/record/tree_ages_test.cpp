// What the cores of a tree say of each other's age follows the edits of each.
#include "libcore/edit/finding_edits.h"
#include "libcore/edit/reading_edits.h"
#include "libcore/record/tree_ages.h"
#include "tests/measure/straight_reading.h"
#include "tests/record/made_up_project.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

namespace pithward::record {
namespace {

using test::stamp_by;

/// Two cores of one tree, whose piths' years follow from the year of the outermost ring: 1980 and 1990.
struct TreeOfTwo : testing::Test {
    test::TemporaryFolder folder;
    Project project = Project::create(folder.file("a.pithward"), test::made_up_sites(), {}, stamp_by("Ida")).value();

    void SetUp() override {
        for (const int core : {1, 2}) {
            Reading reading = test::straight_reading({0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10});
            reading.pith = test::pith_at(10.5);
            reading.last_year = Year(core == 1 ? 2000 : 2010);
            ASSERT_TRUE(project.add_reading(CoreId{core}, reading, "Propose a reading", stamp_by("Pithward")));
        }
    }
    int compare(AgeFindings findings) {
        const auto cores = project.cores().value();
        return compare_tree_ages(project, std::span(cores.data(), 2), findings, stamp_by("Pithward")).value();
    }
    [[nodiscard]] std::vector<Finding> findings(int reading) const {
        return project.reading(ReadingId{reading}).value().findings;
    }
    void set_year(int reading, int year) {
        const auto edit = set_last_year(project.reading(ReadingId{reading}).value(), Year(year));
        ASSERT_TRUE(project.edit(ReadingId{reading}, edit, stamp_by("Ida")).has_value());
    }
    /// From now on it is a person's.
    void confirm(int reading) {
        const Reading now = project.reading(ReadingId{reading}).value();
        Boundary after = now.boundaries[2];
        after.confirmation = Confirmation::LookedAt;
        ASSERT_TRUE(
            project.edit(now.id, Edit{Changed<Boundary>{now.boundaries[2], after}}, stamp_by("Ida")).has_value());
    }
};

TEST_F(TreeOfTwo, AnOpenFindingGoesWhenTheOneOrTheOtherIsRighted) {
    for (const int righted : {1, 2}) {
        set_year(1, 2000);
        set_year(2, 2010);
        ASSERT_EQ(compare(AgeFindings::FollowAdd), 1);
        ASSERT_EQ(findings(2).size(), 1U) << "on the one that was read last";
        set_year(righted, righted == 1 ? 2010 : 2000);
        EXPECT_EQ(compare(AgeFindings::Follow), 0);
        EXPECT_TRUE(findings(2).empty());
    }
}

TEST_F(TreeOfTwo, ItGoesAlsoWhereAPersonHasWorkedOnEither) {
    ASSERT_EQ(compare(AgeFindings::FollowAdd), 1);
    confirm(2);
    set_year(2, 2005);
    const std::vector<ReadingId> changed{ReadingId{2}};
    ASSERT_TRUE(follow_tree_ages(project, changed, "0").has_value());
    ASSERT_EQ(findings(2).size(), 1U) << "they differ still, and it tells the years of now";
    confirm(1);
    set_year(2, 2000);
    ASSERT_TRUE(follow_tree_ages(project, changed, "0").has_value());
    EXPECT_TRUE(findings(2).empty());
    EXPECT_EQ(project.history(CoreId{2})->back().who, "Pithward");
    // Nothing new comes on what a person has worked on.
    set_year(2, 2010);
    ASSERT_TRUE(follow_tree_ages(project, changed, "0").has_value());
    EXPECT_EQ(compare(AgeFindings::FollowAdd), 0);
    EXPECT_TRUE(findings(2).empty());
}

TEST_F(TreeOfTwo, WhatAPersonAnsweredStays) {
    ASSERT_EQ(compare(AgeFindings::FollowAdd), 1);
    const Document document = project.document(ReadingId{2}).value();
    const auto edit = settle_finding(document.reading(), document.reading().findings[0].id, Finding::State::KeptAsItIs,
                                     "two stems", document.fresh_id());
    ASSERT_TRUE(project.edit(ReadingId{2}, edit.value(), stamp_by("Ida")).has_value());
    set_year(2, 2000);
    EXPECT_EQ(compare(AgeFindings::FollowAdd), 0);
    ASSERT_EQ(findings(2).size(), 1U);
    EXPECT_EQ(findings(2)[0].state, Finding::State::KeptAsItIs);
}

} // namespace
} // namespace pithward::record
