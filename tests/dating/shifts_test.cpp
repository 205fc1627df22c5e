#include "libcore/dating/agreement.h"
#include "libcore/dating/pair_results.h"
#include "libcore/dating/pairs.h"
#include "libcore/dating/segments.h"
#include "libcore/dating/shifts.h"
#include "libcore/dating/student.h"
#include "tests/dating/made_up.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

using namespace dating;

YearSeries noise(int first_year, int n, Dice& dice) {
    YearSeries series{first_year, Eigen::ArrayXd(n)};
    for (double& value : series.values) {
        value = dice.normal();
    }
    return series;
}

TEST(EveryShift, FindsWhereAPieceWasCutOut) {
    Dice dice(11);
    const YearSeries whole = noise(1700, 300, dice);
    YearSeries piece{1, whole.values.segment(120, 60)};
    for (double& value : piece.values) {
        value += 0.8 * dice.normal();
    }
    const auto places = ranked(every_shift(piece, whole, least_overlap_of(piece)), 3);
    ASSERT_EQ(places.size(), 3);
    EXPECT_EQ(places[0].match.shift, 1819);
    EXPECT_EQ(places[0].match.overlap, 60);
    EXPECT_LT(places[0].chance_of_best, 1e-6);
    EXPECT_GT(places[1].chance_of_best, 1e-3);
}

TEST(EveryShift, ChanceOfTheBestIsHonestForNoise) {
    // Of 200 pieces that belong nowhere, about one in ten must have a best match with a chance under 0.1.
    Dice dice(12);
    const YearSeries reference = noise(1700, 300, dice);
    int under = 0;
    for (int k = 0; k < 200; ++k) {
        const YearSeries piece = noise(1, 80, dice);
        under += ranked(every_shift(piece, reference, 30), 1)[0].chance_of_best < 0.1 ? 1 : 0;
    }
    EXPECT_GE(under, 8); // Binomial, 200 at 0.1: 8 to 33 in all but one case in five hundred.
    EXPECT_LE(under, 33);
}

TEST(EveryShift, AutocorrelationMakesAMatchLessRemarkable) {
    Dice dice(13);
    YearSeries a = noise(1800, 150, dice);
    YearSeries b = noise(1800, 150, dice);
    for (int i = 1; i < 150; ++i) {
        a.values(i) += 0.8 * a.values(i - 1);
        b.values(i) += 0.8 * b.values(i - 1);
    }
    for (const ShiftMatch& match : every_shift(a, b, 30)) {
        if (match.r > 0.0) {
            EXPECT_GT(match.chance, student_tail(match.t, match.overlap - 2));
        }
    }
}

TEST(EveryShift, IsAtEachShiftWhatTheAgreementOfTheTwoIs) {
    Dice dice(14);
    YearSeries a = noise(1850, 90, dice);
    YearSeries b = noise(1800, 130, dice);
    a.values += 1000.0; // Far from zero, where sums of squares lose digits.
    a.values.segment(30, 5).setConstant(none);
    b.values.segment(70, 8).setConstant(none);
    b.values.tail(2).setConstant(none);
    const auto all = every_shift(a, b, 30);
    EXPECT_GT(all.size(), 100);
    for (const ShiftMatch& match : all) {
        const Agreement here = agreement(a, b, match.shift);
        EXPECT_EQ(match.overlap, here.overlap);
        EXPECT_NEAR(match.r, here.r.value(), 1e-10);
        EXPECT_NEAR(match.t, here.t, 1e-8);
    }
    const auto slow = ranked(all, 3);
    const auto soon = best_shifts(a, b, 30, 3);
    ASSERT_EQ(soon.size(), 3);
    for (std::size_t k = 0; k < soon.size(); ++k) {
        EXPECT_EQ(soon[k].match, slow[k].match);
        EXPECT_EQ(soon[k].chance_of_best, slow[k].chance_of_best);
    }
}

TEST(EveryShift, LeavesOutWhereOneOfThemDoesNotVary) {
    Dice dice(15);
    YearSeries a = noise(1800, 100, dice);
    a.values.head(50).setConstant(0.3);
    for (const ShiftMatch& match : every_shift(a, noise(1800, 100, dice), 30)) {
        EXPECT_LT(match.shift, 50); // From there on only the years without variation are in common.
    }
}

TEST(EveryShift, OfSeriesThatAreTooShortIsEmpty) {
    EXPECT_TRUE(every_shift(years_from(1900, {1, 2, 3}), years_from(1900, {1, 2, 3}), 5).empty());
    EXPECT_TRUE(every_shift({}, years_from(1900, {1, 2, 3}), 5).empty());
}

/// What `every_pair_at_every_shift` must give, by one correlation after the other.
void expect_as_one_by_one(const SiteTable& table, int least_overlap) {
    const PairMatches fast = every_pair_at_every_shift(table, least_overlap);
    const PairCorrelations dated = pair_correlations(table, least_overlap);
    for (int i = 0; i < table.series(); ++i) {
        for (int j = 0; j < table.series(); ++j) {
            if (i == j) {
                continue;
            }
            const auto all = every_shift(table.column(i), table.column(j), least_overlap);
            ASSERT_EQ(fast.positions(i, j), static_cast<int>(all.size()));
            const ShiftMatch best = ranked(all, 1)[0].match;
            EXPECT_EQ(fast.shift(i, j), best.shift) << i << ' ' << j;
            EXPECT_EQ(fast.overlap(i, j), best.overlap);
            EXPECT_NEAR(fast.r(i, j), best.r, 1e-9);
            const Agreement here = agreement(table.column(i), table.column(j));
            EXPECT_EQ(dated.overlap(i, j), here.overlap);
            if (here.overlap >= least_overlap) {
                EXPECT_NEAR(dated.r(i, j), *here.r, 1e-9);
            } else {
                EXPECT_TRUE(std::isnan(dated.r(i, j)));
            }
        }
    }
}

TEST(EveryPair, IsWhatOneByOneGives) {
    Dice dice(14);
    const SiteTable table = site_table(
        {noise(1800, 90, dice), noise(1820, 100, dice), noise(1790, 45, dice), noise(1880, 60, dice)}, {0, 1, 2, 3});
    expect_as_one_by_one(table, 30);
}

TEST(EveryPair, IsToldWithItsChanceWhereItFitsBest) {
    Dice dice(21);
    const YearSeries right = noise(1800, 120, dice);
    YearSeries early = right; // Dated three years too early.
    early.first_year -= 3;
    const YearSeries brief = noise(1800, 20, dice);
    const SiteTable table = site_table({right, early, brief}, {0, 1, 2});
    const auto pairs = pair_results(table);
    ASSERT_EQ(pairs.size(), 3U);
    EXPECT_EQ(pairs[0].first, 0U);
    EXPECT_EQ(pairs[0].second, 1U);
    EXPECT_EQ(pairs[0].overlap, 117);
    EXPECT_LT(*pairs[0].r, 0.5);
    ASSERT_TRUE(pairs[0].best);
    EXPECT_EQ(pairs[0].best->match.shift, -3) << "the first is to be moved to the years of the second";
    EXPECT_NEAR(pairs[0].best->match.r, 1.0, 1e-9);
    EXPECT_LT(pairs[0].best->chance_of_best, 1e-12);
    const auto one_by_one = every_shift(table.column(0), table.column(1), least_pair_overlap);
    EXPECT_EQ(pairs[0].positions, static_cast<int>(one_by_one.size()));
    EXPECT_FALSE(pairs[1].r) << "too few years in common";
    EXPECT_FALSE(pairs[1].best);
    EXPECT_EQ(pairs[1].positions, 0);
}

TEST(EveryPair, HasTheChanceThatOneByOneGives) {
    Dice dice(22);
    const SiteTable table = site_table({noise(1800, 90, dice), noise(1820, 100, dice)}, {0, 1});
    const PairResult pair = pair_results(table).at(0);
    const RankedMatch expected = ranked(every_shift(table.column(0), table.column(1), least_pair_overlap), 1).at(0);
    EXPECT_EQ(pair.best->match.shift, expected.match.shift);
    EXPECT_NEAR(pair.best->match.t, expected.match.t, 1e-6);
    EXPECT_NEAR(pair.best->chance_of_best, expected.chance_of_best, 1e-9);
}

TEST(EveryPair, IsWhatOneByOneGivesWithGaps) {
    Dice dice(15);
    YearSeries holes = noise(1810, 80, dice);
    holes.values.segment(20, 7).setConstant(none);
    holes.values(50) = none;
    expect_as_one_by_one(site_table({noise(1800, 90, dice), holes, noise(1830, 70, dice)}, {0, 1, 2}), 30);
}

TEST(Segments, RunFromTheYoungestEndAndCoverTheSeries) {
    Dice dice(16);
    const YearSeries series = noise(1850, 175, dice); // To 2024.
    const auto parts = segments(series, series, 40, 20);
    EXPECT_EQ(parts.back().from, 1985);
    EXPECT_EQ(parts.back().to, 2024);
    EXPECT_EQ(parts[parts.size() - 2].from, 1965);
    EXPECT_EQ(parts.front().from, 1850);
    EXPECT_EQ(parts.front().to, 1889);
    for (const Segment& part : parts) {
        EXPECT_EQ(part.best_shift, 0);
        EXPECT_NEAR(*part.r, 1.0, 1e-12);
    }
}

TEST(Segments, NameTheShiftOfAStretchThatIsAYearOff) {
    Dice dice(17);
    const YearSeries right = noise(1800, 200, dice);
    // Ring 1900 overlooked: all older ones bear a year too many.
    YearSeries short_of_one{1801, Eigen::ArrayXd(199)};
    short_of_one.values << right.values.head(100), right.values.tail(99);
    const auto parts = segments(short_of_one, right, 40, 40);
    EXPECT_EQ(parts.front().best_shift, -1);
    EXPECT_EQ(parts.back().best_shift, 0);
}

TEST(Segments, OfAShortOrConstantSeriesAreStated) {
    const YearSeries five = years_from(1990, {1, 2, 1, 3, 1});
    const auto parts = segments(five, five, 40, 20);
    ASSERT_EQ(parts.size(), 1);
    EXPECT_EQ(parts[0].from, 1990);
    EXPECT_EQ(parts[0].to, 1994);
    EXPECT_FALSE(segments(years_from(1990, {1, 1, 1, 1, 1, 1}), five, 40, 20)[0].r.has_value());
    EXPECT_TRUE(segments({}, five, 40, 20).empty());
}

TEST(SegmentLength, KeepsChanceUnderOneInAThousand) {
    for (const double r : {0.5, 0.6, 0.7}) {
        const int length = segment_length_for(r);
        EXPECT_LT(best_of(student_tail(t_of(r, length), length - 2), 2 * most_segment_shift + 1), 0.001);
    }
    EXPECT_EQ(segment_length_for(0.95), 20);
    EXPECT_EQ(segment_length_for(0.1), 100);
}

} // namespace
} // namespace pithward::test
