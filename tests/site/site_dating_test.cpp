// A project's readings dated: which slips are found and where, what comes first, what is remembered.
#include "app/site/site_dating.h"
#include "app/site/slip_words.h"
#include "libcore/dating/slips/slip_finding.h"
#include "libcore/edit/document.h"
#include "libcore/edit/finding_edits.h"
#include "tests/site/site_project.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace pithward::bench {
namespace {

class SiteDatingOfAProject : public SiteProject {
protected:
    SiteDating dated(SiteShelf& shelf) {
        auto cores = shelf.cores(test::opened(file, record::Project::Access::Read));
        EXPECT_TRUE(cores.has_value());
        return date_site(std::move(*cores), {});
    }
    SiteDating dated() {
        SiteShelf shelf;
        return dated(shelf);
    }
    static const SiteLine& line(const SiteDating& dating, ReadingId id) {
        return *std::ranges::find_if(dating.lines,
                                     [&](const SiteLine& one) { return dating.core(one).reading.id == id; });
    }
    static const dating::SlipPlace& best_place(const SiteDating& dating, ReadingId id) {
        return dating.dated(line(dating, id))->places.at(0).at(0);
    }
    void settle(const SiteDating& dating, ReadingId id, Finding::State state) {
        const dating::DatedResult& series = *dating.dated(line(dating, id));
        const Finding finding = dating::slip_finding(series.slips.at(0), series.places.at(0).at(0));
        record::Project project = test::opened(file);
        const Document document = project.document(id).value();
        const auto edit = settle_as(document.reading(), finding, state, document.fresh_id());
        ASSERT_TRUE(edit.has_value()) << edit.error().line();
        ASSERT_TRUE(project.edit(id, *edit, test::stamp_by("Ida")).has_value());
    }
};

TEST_F(SiteDatingOfAProject, EachMistakeIsBroughtToItsPlaceWithTheChangeThatTheWoodSpeaksFor) {
    const SiteDating dating = dated();
    ASSERT_EQ(dating.lines.size(), 8U);
    const dating::SlipPlace& overlooked = best_place(dating, merged);
    EXPECT_EQ(overlooked.ring_year, 1969);
    EXPECT_EQ(overlooked.place.at, kept(merged).not_annual.at(0).at);
    EXPECT_EQ(words_of_change(overlooked), "Put the boundary of 1969 in");
    const dating::SlipPlace& doubled = best_place(dating, split);
    EXPECT_EQ(doubled.ring_year, 1960);
    EXPECT_EQ(doubled.place.change, ProposedChange(ProposeRemoval{BoundaryId{1000}}));
    EXPECT_EQ(words_of_change(doubled), "Take the boundary in 1960 out");
    const dating::SlipPlace& absent = best_place(dating, lost);
    EXPECT_NEAR(absent.ring_year, 1975, 2);
    EXPECT_TRUE(std::holds_alternative<ProposeAbsentRing>(absent.place.change));
}

TEST_F(SiteDatingOfAProject, WhatWantsALookComesFirst) {
    const SiteDating dating = dated();
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_LE(dating.core(dating.lines[i]).reading.id, lost) << i;
        EXPECT_FALSE(verdict_of(dating, dating.lines[i]).contains("Goes with the others"));
    }
    EXPECT_EQ(verdict_of(dating, dating.lines.back()), "Goes with the others as it is dated");
}

TEST_F(SiteDatingOfAProject, WhatWasAcceptedIsPutRight) {
    const SiteDating before = dated();
    for (const ReadingId id : {merged, split, lost}) {
        settle(before, id, Finding::State::ProposalTaken);
    }
    const SiteDating after = dated();
    for (const SiteLine& one : after.lines) {
        EXPECT_TRUE(after.dated(one)->slips.empty()) << after.core(one).name;
        EXPECT_EQ(after.dated(one)->first_year, 1921) << after.core(one).name;
    }
    EXPECT_EQ(kept(merged).not_annual.size(), 0U);
    EXPECT_EQ(kept(split).not_annual.size(), 1U);
    EXPECT_EQ(kept(lost).absent_rings.size(), 1U);
    EXPECT_EQ(kept(lost).findings.at(0).state, Finding::State::ProposalTaken) << "it goes through review";
}

TEST_F(SiteDatingOfAProject, WhatIsNotSoIsRemembered) {
    settle(dated(), split, Finding::State::KeptAsItIs);
    const SiteDating after = dated();
    const SiteLine& one = line(after, split);
    ASSERT_EQ(after.dated(one)->slips.size(), 1U) << "the other cores say so still";
    EXPECT_TRUE(after.settled(one, 0));
    EXPECT_TRUE(verdict_of(after, one).contains("settled: it is not so")) << verdict_of(after, one).toStdString();
    EXPECT_GT(&one - after.lines.data(), 1) << "it comes after those that are open";
    EXPECT_FALSE(after.settled(line(after, merged), 0));
}

TEST_F(SiteDatingOfAProject, OnlyWhatWasChangedIsReadAgain) {
    SiteShelf shelf;
    const SiteDating before = dated(shelf);
    settle(before, split, Finding::State::KeptAsItIs);
    const SiteDating after = dated(shelf);
    EXPECT_FALSE(same_readings(before.cores, after.cores));
    EXPECT_NE(before.cores.cores[1], after.cores.cores[1]);
    EXPECT_EQ(before.cores.cores[0], after.cores.cores[0]);
    EXPECT_TRUE(same_readings(after.cores, dated(shelf).cores));
}

TEST_F(SiteDatingOfAProject, AYearHasItsPlaceOnTheScan) {
    SiteShelf shelf;
    const auto cores = shelf.cores(test::opened(file, record::Project::Access::Read)).value();
    const SiteCore& core = *cores.cores.at(7);
    EXPECT_EQ(place_of_year(core, 2020), core.reading.boundaries[0].at);
    EXPECT_EQ(place_of_year(core, 2000), core.reading.boundaries[20].at);
    EXPECT_FALSE(place_of_year(core, 1800));
}

} // namespace
} // namespace pithward::bench
