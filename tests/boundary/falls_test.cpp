#include "libimaging/boundary/falls.h"

#include <gtest/gtest.h>

#include <vector>

namespace pithward::boundary {
namespace {

TEST(Falls, AreTheStretchesThatGetDarker) {
    //                              0     1     2     3     4     5     6     7     8     9
    const std::vector<float> profile{1.0F, 1.0F, 0.8F, 0.2F, 0.0F, 0.3F, 0.6F, 0.9F, 0.4F, 0.1F};
    const auto falls = falls_of(profile, 0.1);
    ASSERT_EQ(falls.size(), 2U);
    EXPECT_EQ(falls[0].top, 1);
    EXPECT_EQ(falls[0].bottom, 4);
    EXPECT_NEAR(falls[0].height, 1.0, 1e-6);
    EXPECT_NEAR(falls[0].column, 2.5, 1e-6) << "half of the change is done half-way between 0.8 and 0.2";
    EXPECT_NEAR(falls[0].steepest, 0.6, 1e-6);
    EXPECT_NEAR(falls[0].rise_after, 0.9, 1e-6);
    EXPECT_EQ(falls[1].top, 7);
    EXPECT_NEAR(falls[1].height, 0.8, 1e-6);
    EXPECT_NEAR(falls[1].rise_after, 0.0, 1e-6);
}

TEST(Falls, LowerThanAskedForAreLeftOut) {
    const std::vector<float> profile{1.0F, 0.9F, 1.0F, 0.2F, 0.9F, 0.85F, 0.9F};
    EXPECT_EQ(falls_of(profile, 0.3).size(), 1U);
    EXPECT_EQ(falls_of(profile, 0.3)[0].top, 2);
}

TEST(Falls, ACounterRiseDividesOne) {
    const auto falls = falls_of({1.0F, 0.5F, 0.7F, 0.0F}, 0.1);
    ASSERT_EQ(falls.size(), 2U);
    EXPECT_NEAR(falls[0].height, 0.5, 1e-6);
    EXPECT_NEAR(falls[0].rise_after, 0.2, 1e-6);
    EXPECT_NEAR(falls[1].height, 0.7, 1e-6);
}

TEST(Falls, AShoulderDividesOne) {
    const std::vector<float> profile{1.0F, 0.7F, 0.4F, 0.35F, 0.3F, 0.0F, -0.3F};
    const auto falls = falls_of(profile, 0.1);
    ASSERT_EQ(falls.size(), 2U);
    EXPECT_EQ(falls[0].top, 0);
    EXPECT_EQ(falls[1].bottom, 6);
    EXPECT_EQ(falls[0].bottom, falls[1].top);
    // Less of a dip in the gradient does not.
    EXPECT_EQ(falls_of({1.0F, 0.7F, 0.4F, 0.2F, 0.0F, -0.3F, -0.6F}, 0.1).size(), 1U);
}

TEST(Falls, AFinerProfileDividesTwoCloseTogether) {
    const std::vector<float> coarse{1.0F, 0.95F, 0.8F, 0.6F, 0.45F, 0.25F, 0.1F, 0.05F, 0.5F};
    const auto whole = falls_of(coarse, 0.1);
    ASSERT_EQ(whole.size(), 1U);
    const std::vector<float> finer{1.0F, 1.0F, 0.7F, 0.6F, 0.62F, 0.3F, 0.0F, 0.0F, 0.5F};
    const auto parts = divided(whole, finer, 0.2);
    ASSERT_EQ(parts.size(), 2U);
    EXPECT_NEAR(parts[0].height, 0.4, 1e-6);
    EXPECT_NEAR(parts[0].column, 1.6667, 1e-3);
    EXPECT_NEAR(parts[1].height, 0.6, 1e-6) << "the counter-rise is a ripple";
    EXPECT_GT(parts[1].column, 4.5);
    EXPECT_DOUBLE_EQ(parts[1].rise_after, whole[0].rise_after);
    EXPECT_EQ(divided(whole, finer, 0.5).size(), 1U) << "the lesser part is too small";
    EXPECT_EQ(divided(whole, coarse, 0.2).size(), 1U);
}

TEST(Falls, OfARisingOrFlatOrEmptyProfileAreNone) {
    EXPECT_TRUE(falls_of({0.0F, 0.1F, 0.2F}, 0.05).empty());
    EXPECT_TRUE(falls_of(std::vector<float>(50, 0.5F), 0.05).empty());
    EXPECT_TRUE(falls_of({}, 0.05).empty());
    EXPECT_TRUE(falls_of({0.4F}, 0.05).empty());
}

} // namespace
} // namespace pithward::boundary
