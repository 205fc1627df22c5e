#include "libimaging/boundary/breaks.h"

#include <gtest/gtest.h>

namespace pithward::boundary {
namespace {

/// Wood all over: 61 lanes of 0.1 mm, 20 mm long.
FlatStrip whole_strip() {
    FlatStrip strip;
    strip.tone = cv::Mat1f::zeros(61, 1000);
    strip.weight = cv::Mat1f(61, 1000, 1.0F);
    strip.path_mm = 20.0;
    return strip;
}

TEST(Gaps, AreDarkStretchesThatCrossThePath) {
    FlatStrip strip = whole_strip();
    strip.weight(cv::Range(15, 46), cv::Range(300, 320)) = 0.0F;
    const auto gaps = gaps_on_path(strip, 0.0, 999.0);
    ASSERT_EQ(gaps.size(), 1U);
    EXPECT_NEAR(gaps[0].from, 299.5, 1e-9);
    EXPECT_NEAR(gaps[0].to, 319.5, 1e-9);
    EXPECT_GT(gaps[0].breadth_share, 0.99);
}

TEST(Gaps, BesideThePathOrTooShortOrOutsideTheRangeAreNone) {
    FlatStrip strip = whole_strip();
    strip.weight(cv::Range(0, 25), cv::Range(100, 160)) = 0.0F;  // beside it
    strip.weight(cv::Range(29, 32), cv::Range(200, 260)) = 0.0F; // dirt on it
    strip.weight(cv::Range(0, 61), cv::Range(400, 403)) = 0.0F;  // 0.06 mm
    strip.weight(cv::Range(0, 61), cv::Range(900, 950)) = 0.0F;  // beyond the end asked for
    EXPECT_TRUE(gaps_on_path(strip, 0.0, 880.0).empty());
    EXPECT_EQ(gaps_on_path(strip, 0.0, 999.0).size(), 1U);
}

TEST(Gaps, AreTakenOffPlaces) {
    const std::vector<Gap> gaps{{.from = 10.0, .to = 20.0}, {.from = 50.0, .to = 55.0}};
    EXPECT_DOUBLE_EQ(without_gaps(gaps, 5.0), 5.0);
    EXPECT_DOUBLE_EQ(without_gaps(gaps, 15.0), 10.0);
    EXPECT_DOUBLE_EQ(without_gaps(gaps, 40.0), 30.0);
    EXPECT_DOUBLE_EQ(without_gaps(gaps, 60.0), 45.0);
    EXPECT_DOUBLE_EQ(without_gaps({}, 60.0), 60.0);
}

} // namespace
} // namespace pithward::boundary
