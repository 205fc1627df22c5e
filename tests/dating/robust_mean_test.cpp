#include "libcore/dating/robust_mean.h"
#include "libcore/dating/site_table.h"
#include "tests/dating/made_up.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::test {
namespace {

using namespace dating;

TEST(BiweightMean, SolvesItsOwnEquation) {
    const Eigen::ArrayXd values = array({0.9, 1.1, 1.0, 1.3, none, 0.8, 2.5});
    const double mean = biweight_mean(values);
    const Eigen::ArrayXd weights = biweight_weights(values);
    // The median is 1.05, and the distances from it 0.05, 0.05, 0.15, 0.25, 0.25, 1.45 have the median 0.2.
    double sum = 0.0;
    double all = 0.0;
    for (const double value : {0.9, 1.1, 1.0, 1.3, 0.8, 2.5}) {
        const double u = (value - mean) / (9.0 * 0.2);
        const double weight = (1.0 - u * u) * (1.0 - u * u);
        sum += weight * value;
        all += weight;
    }
    EXPECT_NEAR(mean, sum / all, 1e-10);
    EXPECT_EQ(weights(4), 0.0);
    EXPECT_NEAR(weights(5), std::pow(1.0 - std::pow((0.8 - mean) / 1.8, 2), 2), 1e-10);
}

TEST(BiweightMean, LeavesOutWhatIsFarOff) {
    EXPECT_NEAR(biweight_mean(array({0.9, 1.0, 1.1, 1.0, 1.05, 50.0})), 1.01, 0.005);
}

TEST(BiweightMean, OfFewOrEqualValues) {
    EXPECT_EQ(biweight_mean(array({1.0, 3.0})), 2.0);
    EXPECT_EQ(biweight_mean(array({1.0, 1.0, 1.0, 7.0})), 1.0);
    EXPECT_TRUE(std::isnan(biweight_mean(array({none, none}))));
    EXPECT_EQ(dating::median(array({4.0, none, 1.0, 2.0, 3.0})), 2.5);
}

TEST(MeansOfOtherTrees, LeaveOutTheTreesOwnSeries) {
    const SiteTable table =
        site_table({years_from(1900, {1.0, 1.0}), years_from(1900, {3.0}), years_from(1901, {5.0})}, {0, 0, 1});
    const auto means = means_of_other_trees(table);
    EXPECT_TRUE(std::isnan(means[0].at(1900)));
    EXPECT_EQ(means[0].at(1901), 5.0);
    EXPECT_TRUE(std::isnan(means[1].at(1900)));
    EXPECT_EQ(means[2].at(1900), 2.0);
    EXPECT_EQ(means[2].at(1901), 1.0);
}

} // namespace
} // namespace pithward::test
