#include "libcore/dating/chronology.h"
#include "libcore/dating/site_statistics.h"
#include "tests/dating/made_up.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

using namespace dating;

TEST(MeanSensitivity, IsAsPublished) {
    // By hand: |2 (2 - 1) / 3| = 2/3, |2 (1 - 2) / 3| = 2/3, |2 (0 - 1) / 1| = 2, 0 and 0: 0.
    EXPECT_NEAR(*mean_sensitivity(array({1.0, 2.0, 1.0, 0.0, 0.0})), (2.0 / 3.0 + 2.0 / 3.0 + 2.0 + 0.0) / 4.0, 1e-12);
    EXPECT_NEAR(*mean_sensitivity(array({1.0, none, 1.0, 3.0})), 1.0, 1e-12);
    EXPECT_FALSE(mean_sensitivity(array({1.0})).has_value());
}

/// Indices of trees with known correlations: series = a common + b tree + c own.
SiteTable indices(int trees, int cores, double common, double tree, int years) {
    Dice dice(21);
    const double own = std::sqrt(1.0 - common * common - tree * tree);
    Eigen::ArrayXd growth(years);
    for (double& value : growth) {
        value = dice.normal();
    }
    std::vector<YearSeries> series;
    std::vector<int> numbers;
    for (int t = 0; t < trees; ++t) {
        Eigen::ArrayXd of_tree(years);
        for (double& value : of_tree) {
            value = dice.normal();
        }
        for (int c = 0; c < cores; ++c) {
            YearSeries one{1000, common * growth + tree * of_tree};
            for (double& value : one.values) {
                value += own * dice.normal();
            }
            series.push_back(one);
            numbers.push_back(t);
        }
    }
    return site_table(series, numbers);
}

TEST(CommonVariance, TellsTreesApart) {
    // Between trees 0.7^2 = 0.49, within 0.49 + 0.5^2 = 0.74; the mean of two cores: 0.49 / (0.74 + 0.26 / 2) = 0.563.
    const CommonVariance found = common_variance(indices(8, 2, 0.7, 0.5, 20'000));
    EXPECT_NEAR(*found.between, 0.49, 0.01);
    EXPECT_NEAR(*found.within, 0.74, 0.01);
    EXPECT_NEAR(*found.effective, 0.49 / 0.87, 0.01);
    EXPECT_EQ(found.trees, 8.0);
    EXPECT_NEAR(*found.eps, 8 * 0.5632 / (8 * 0.5632 + 1 - 0.5632), 0.003);
    EXPECT_NEAR(*found.signal_to_noise, 8 * 0.5632 / (1 - 0.5632), 0.5);
    // All pairs: 8 of 120 are within trees.
    EXPECT_NEAR(*found.r_bar, (8 * *found.within + 112 * *found.between) / 120, 1e-9);
}

TEST(CommonVariance, HasAnIntervalByDrawingTreesAnew) {
    const CommonVariance few = common_variance(indices(6, 2, 0.7, 0.5, 120));
    EXPECT_LT(*few.effective_low, *few.effective);
    EXPECT_GT(*few.effective_high, *few.effective);
    EXPECT_LT(*few.eps_low, *few.eps);
    EXPECT_GT(*few.eps_high, *few.eps);
    const CommonVariance many = common_variance(indices(40, 2, 0.7, 0.5, 120));
    EXPECT_LT(*many.effective_high - *many.effective_low, *few.effective_high - *few.effective_low);
    EXPECT_FALSE(common_variance(indices(4, 2, 0.7, 0.5, 120)).eps_low.has_value());
}

TEST(CommonVariance, OfOneTreeOrOfNoisySeriesIsStated) {
    EXPECT_FALSE(common_variance(indices(1, 3, 0.7, 0.5, 100)).eps.has_value());
    EXPECT_GE(*common_variance(indices(3, 1, 0.0, 0.0, 40)).eps, 0.0);
    EXPECT_FALSE(common_variance(SiteTable{}).r_bar.has_value());
}

TEST(RunningVariance, RunsFromTheYoungestEnd) {
    const auto windows = running_variance(indices(5, 1, 0.7, 0.0, 130), 50, 25);
    ASSERT_EQ(windows.size(), 4);
    EXPECT_EQ(windows.back().to, 1129);
    EXPECT_EQ(windows.front().from, 1005);
}

TEST(Chronology, FollowsTheGrowthInCommonWithinItsInterval) {
    const auto site = made_up_site({.trees = 12, .cores = 2, .years = 120, .r = 0.8, .seed = 4});
    const Chronology made = chronology(site, {});
    ASSERT_FALSE(made.years.empty());
    int inside = 0;
    for (const ChronologyYear& year : made.years) {
        ASSERT_TRUE(year.value && year.low && year.high);
        EXPECT_EQ(year.trees, 12);
        EXPECT_EQ(year.series, 24);
        inside += *year.low <= *year.value && *year.value <= *year.high ? 1 : 0;
    }
    EXPECT_EQ(inside, static_cast<int>(made.years.size()));
    EXPECT_GT(*made.variance.eps, 0.9);
    EXPECT_EQ(chronology(site, {}).years[5].low, made.years[5].low); // The same each time.
}

TEST(Chronology, HasNoIntervalForTwoTreesAndNoValueBetweenSeries) {
    std::vector<TreeSeries> site{{"a", "a", years_from(1900, {1.0, 2.0, 1.5})},
                                 {"b", "b", years_from(1905, {1.0, 2.0})}};
    IndexOptions options;
    options.trend = TrendKind::Mean;
    options.prewhiten = false;
    const Chronology made = chronology(site, options);
    ASSERT_EQ(made.years.size(), 7);
    EXPECT_FALSE(made.years[3].value.has_value());
    EXPECT_EQ(made.years[3].series, 0);
    EXPECT_TRUE(made.years[0].value && !made.years[0].low);
}

TEST(PointerYears, AreThoseInWhichMostTreesAgree) {
    std::vector<YearSeries> widths;
    std::vector<int> trees;
    for (int i = 0; i < 10; ++i) {
        widths.push_back(years_from(1900, {1, 1, 1, 1, i < 8 ? 0.7 : 1.0, 1, 1, 1, 1, i < 7 ? 2.0 : 1.0}));
        trees.push_back(i);
    }
    const auto found = pointer_years(site_table(widths, trees));
    ASSERT_EQ(found.size(), 1);
    EXPECT_EQ(found[0].year, 1904);
    EXPECT_FALSE(found[0].wide);
    EXPECT_NEAR(found[0].share, 0.8, 1e-12);
}

} // namespace
} // namespace pithward::test
