#include "libcore/dating/slips/find_slips.h"
#include "tests/dating/made_up.h"

#include <gtest/gtest.h>

#include <cstdlib>

namespace pithward::test {
namespace {

using namespace dating;
using SlipKind = Slip::Kind;

MadeUpSite clear_site(unsigned seed = 1) {
    return {.trees = 10, .cores = 2, .first_year = 1800, .years = 200, .r = 0.75, .seed = seed};
}

std::vector<Slip> slips_of_first(const std::vector<TreeSeries>& site) {
    return find_slips(site, {})[0].slips;
}

TEST(FindSlips, FindsTwoRingsTakenAsOne) {
    auto site = made_up_site(clear_site());
    merge_rings(site[0].widths, 1900);
    const auto slips = slips_of_first(site);
    ASSERT_EQ(slips.size(), 1);
    EXPECT_EQ(slips[0].kind, SlipKind::RingMissing);
    EXPECT_EQ(slips[0].year, 1900);
    EXPECT_EQ(slips[0].ring_year(), 1899);
    EXPECT_GT(slips[0].probability, 0.99);
}

TEST(FindSlips, FindsOneRingTakenAsTwo) {
    auto site = made_up_site(clear_site());
    split_ring(site[0].widths, 1900, 0.4);
    const auto slips = slips_of_first(site);
    ASSERT_EQ(slips.size(), 1);
    EXPECT_EQ(slips[0].kind, SlipKind::RingTooMany);
    EXPECT_EQ(slips[0].year, 1900);
    EXPECT_EQ(slips[0].ring_year(), 1900);
}

TEST(FindSlips, FindsARingLostWithoutATraceWithinItsRange) {
    auto site = made_up_site(clear_site());
    lose_ring(site[0].widths, 1900);
    const auto slips = slips_of_first(site);
    ASSERT_EQ(slips.size(), 1);
    EXPECT_EQ(slips[0].kind, SlipKind::RingMissing);
    EXPECT_LE(slips[0].from, 1901); // The ring just outside of 1900.
    EXPECT_GE(slips[0].to, 1901);
    EXPECT_LE(slips[0].to - slips[0].from, 20);
}

TEST(FindSlips, FindsTwoSlipsInTheSameAndInOppositeDirections) {
    auto same = made_up_site(clear_site());
    merge_rings(same[0].widths, 1860); // The older one first: it leaves the younger years as they are.
    merge_rings(same[0].widths, 1930);
    auto slips = slips_of_first(same);
    ASSERT_EQ(slips.size(), 2);
    EXPECT_EQ(slips[0].year, 1930);
    EXPECT_EQ(slips[1].year, 1860);
    auto opposite = made_up_site(clear_site(2));
    split_ring(opposite[0].widths, 1860, 0.5);
    merge_rings(opposite[0].widths, 1930);
    slips = slips_of_first(opposite);
    ASSERT_EQ(slips.size(), 2);
    EXPECT_EQ(slips[0].kind, SlipKind::RingMissing);
    EXPECT_EQ(slips[1].kind, SlipKind::RingTooMany);
    EXPECT_EQ(slips[1].year, 1860);
}

TEST(FindSlips, SaysNothingOfCleanSeries) {
    for (const unsigned seed : {3U, 4U, 5U}) {
        for (const SeriesSlips& found : find_slips(made_up_site(clear_site(seed)), {})) {
            EXPECT_TRUE(found.slips.empty()) << seed;
            EXPECT_EQ(found.whole_shift, 0);
        }
    }
}

TEST(FindSlips, IsNotMisledByOtherMisdatedSeries) {
    auto site = made_up_site(clear_site(6));
    for (const std::size_t i : {0U, 4U, 8U, 12U}) { // Two trees in five have a misdated series, all in one direction.
        merge_rings(site[i].widths, 1900 + static_cast<int>(i));
    }
    const auto found = find_slips(site, {});
    for (std::size_t i = 0; i < site.size(); ++i) {
        const bool wrong = i == 0 || i == 4 || i == 8 || i == 12;
        ASSERT_EQ(found[i].slips.size(), wrong ? 1 : 0) << site[i].id;
        if (wrong) {
            EXPECT_EQ(found[i].slips[0].year, 1900 + static_cast<int>(i));
        }
    }
}

TEST(FindSlips, FindsAMistakeThatBothCoresOfATreeShare) {
    auto site = made_up_site(clear_site(7)); // A ring that the tree never laid on that side.
    lose_ring(site[0].widths, 1900);
    lose_ring(site[1].widths, 1900);
    const auto found = find_slips(site, {});
    for (const std::size_t i : {0U, 1U}) {
        ASSERT_EQ(found[i].slips.size(), 1);
        EXPECT_EQ(found[i].slips[0].kind, SlipKind::RingMissing);
        EXPECT_LE(std::abs(found[i].slips[0].ring_year() - 1900), 10);
    }
    EXPECT_TRUE(found[2].slips.empty());
}

TEST(FindSlips, StatesASlipByItsOwnRateNotByThatOfTheSearch) {
    auto site = made_up_site({.trees = 6, .cores = 1, .first_year = 1900, .years = 100, .r = 0.5, .seed = 8});
    lose_ring(site[0].widths, 1930);
    SlipOptions as_sought;
    as_sought.stated_odds = 1.0;
    const auto stated = slips_of_first(site);
    const auto sought = find_slips(site, as_sought)[0].slips;
    ASSERT_EQ(sought.size(), 1);
    ASSERT_EQ(stated.size(), 1); // What is told is the same.
    const double p = sought[0].probability;
    EXPECT_GE(p, 0.5);
    EXPECT_LT(p, 0.9999); // Else there is nothing to see.
    EXPECT_NEAR(stated[0].probability, 0.2 * p / (0.2 * p + 1.0 - p), 1e-12);
    EXPECT_EQ(stated[0].year, sought[0].year);
}

TEST(FindSlips, TakesAnotherSlipForLikelierWhereOneIsSure) {
    // The older of the two is too near to the pith to be told by itself.
    auto one = made_up_site(clear_site(9));
    lose_ring(one[0].widths, 1806);
    auto two = made_up_site(clear_site(9));
    lose_ring(two[0].widths, 1806);
    merge_rings(two[0].widths, 1930);
    SlipOptions all;
    all.least_probability = 0.0;
    const auto expected_about = [&](const std::vector<TreeSeries>& site) {
        const Alignment alignment = find_slips(site, all)[0].alignment;
        double sum = 0.0;
        for (Eigen::Index k = 0; k < alignment.missing.size(); ++k) {
            sum += alignment.first_year + k < 1830 ? alignment.missing(k) : 0.0;
        }
        return sum;
    };
    EXPECT_GT(expected_about(two), 1.5 * expected_about(one));
}

TEST(FindSlips, TellsThatAWholeSeriesIsAYearOff) {
    auto site = made_up_site(clear_site());
    site[0].widths.first_year -= 1;
    const auto found = find_slips(site, {});
    EXPECT_TRUE(found[0].slips.empty());
    EXPECT_EQ(found[0].whole_shift, 1);
}

TEST(FindSlips, HoldsAgainstAReference) {
    const auto reference = made_up_site(clear_site());
    std::vector<TreeSeries> alone{reference[0]};
    split_ring(alone[0].widths, 1900, 0.5);
    const std::vector<TreeSeries> others(reference.begin() + 2, reference.end());
    const auto found = find_slips_against(others, alone, {});
    ASSERT_EQ(found[0].slips.size(), 1);
    EXPECT_EQ(found[0].slips[0].year, 1900);
}

TEST(FindSlips, StandsGapsAndAbsentRings) {
    auto site = made_up_site(clear_site());
    site[0].widths.values.segment(60, 4).setConstant(none);
    site[0].widths.values(120) = 0.0;
    site[0].widths.values(121) = 0.0;
    EXPECT_TRUE(slips_of_first(site).empty());
    merge_rings(site[0].widths, 1900);
    ASSERT_EQ(slips_of_first(site).size(), 1);
    EXPECT_EQ(slips_of_first(site)[0].year, 1900);
}

TEST(FindSlips, OfNothingOrOfSeriesThatDoNotMeetIsNothing) {
    EXPECT_TRUE(find_slips({}, {}).empty());
    std::vector<TreeSeries> apart = made_up_site({.trees = 2, .cores = 1, .years = 60});
    apart[1].widths.first_year = -500;
    for (const SeriesSlips& found : find_slips(apart, {})) {
        EXPECT_TRUE(found.slips.empty());
    }
    const std::vector<TreeSeries> tiny{{"a", "a", years_from(1900, {1, 2, 1})}, {"b", "b", years_from(1900, {2})}};
    for (const SeriesSlips& found : find_slips(tiny, {})) {
        EXPECT_TRUE(found.slips.empty());
    }
}

} // namespace
} // namespace pithward::test
