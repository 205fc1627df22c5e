#include "libcore/pith/site_growth.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace pithward::pith {
namespace {

/// Widths that grow toward the pith by a trend that differs between cores.
std::vector<std::vector<double>> grown_cores(int count, double trend, double trend_sd, double scatter) {
    std::mt19937 random(11);
    std::normal_distribution<double> bell;
    std::vector<std::vector<double>> cores(static_cast<std::size_t>(count));
    for (auto& widths : cores) {
        const double own = trend + trend_sd * bell(random);
        for (int ring = 0; ring < 30; ++ring) {
            widths.push_back(std::exp(0.5 - own * ring + scatter * bell(random)));
        }
    }
    return cores;
}

TEST(SiteGrowth, WithoutCoresIsWhatIsAssumed) {
    const GrowthBeforehand growth = growth_of_site({});
    const GrowthBeforehand assumed;
    EXPECT_DOUBLE_EQ(growth.trend, assumed.trend);
    EXPECT_DOUBLE_EQ(growth.trend_sd, assumed.trend_sd);
    EXPECT_DOUBLE_EQ(growth.scatter, assumed.scatter);
    EXPECT_DOUBLE_EQ(growth.persistence, assumed.persistence);
    EXPECT_DOUBLE_EQ(growth.usual_mm, assumed.usual_mm);
    const std::vector<std::vector<double>> short_core{{1.0, 2.0, 3.0}};
    EXPECT_DOUBLE_EQ(growth_of_site(short_core).trend, assumed.trend);
}

TEST(SiteGrowth, ManyCoresTellTheirOwn) {
    const auto cores = grown_cores(200, 0.03, 0.01, 0.15);
    const GrowthBeforehand growth = growth_of_site(cores);
    EXPECT_NEAR(growth.trend, 0.03, 0.002);
    EXPECT_NEAR(growth.trend_sd, 0.01, 0.002);
    EXPECT_NEAR(growth.scatter, 0.15, 0.01);
    EXPECT_NEAR(growth.usual_mm, std::exp(0.5 - 0.03 * 14.5), 0.05);
    EXPECT_LT(growth.persistence, 0.15) << "their rings are independent";
}

TEST(SiteGrowth, FewCoresChangeLittle) {
    const auto cores = grown_cores(1, 0.06, 0.0, 0.05);
    const GrowthBeforehand growth = growth_of_site(cores);
    EXPECT_GT(growth.trend, 0.01);
    EXPECT_LT(growth.trend, 0.03);
}

} // namespace
} // namespace pithward::pith
