#include "libimaging/boundary/share_profile.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::boundary {
namespace {

constexpr int lanes = 40;
constexpr int columns = 60;
constexpr int line_at = 20;
constexpr int vessels_at = 40;

/// Even wood with a faint line in all lanes, and in half of them vessels far darker side by side.
FlatStrip strip_with_line_and_vessels() {
    FlatStrip strip;
    strip.signal = cv::Mat1f::zeros(lanes, columns);
    strip.tone = strip.signal;
    strip.weight = cv::Mat1f::ones(lanes, columns);
    strip.flow_mm = cv::Mat1f::zeros(lanes, columns);
    for (int lane = 0; lane < lanes; ++lane) {
        strip.signal(lane, line_at) = -1.0F;
        strip.signal(lane, vessels_at) = lane % 2 == 0 ? -4.0F : 0.0F;
    }
    return strip;
}

TEST(ShareProfile, ShowsALineAcrossAllLanesAndNotVesselsInHalfOfThem) {
    const FlatStrip strip = strip_with_line_and_vessels();
    const std::vector<float> line = share_profile(strip, strip.signal, 0.75);
    ASSERT_EQ(line.size(), std::size_t{columns});
    EXPECT_FLOAT_EQ(line[line_at], -1.0F);
    EXPECT_FLOAT_EQ(line[vessels_at], 0.0F);
    EXPECT_FLOAT_EQ(line[5], 0.0F);
}

TEST(ShareProfile, ColumnsWithoutWoodRepeatTheLastWithSome) {
    FlatStrip strip = strip_with_line_and_vessels();
    strip.weight.colRange(line_at + 1, line_at + 6).setTo(0.0F);
    strip.weight.colRange(0, 4).setTo(0.0F);
    const std::vector<float> line = share_profile(strip, strip.signal, 0.75);
    EXPECT_FLOAT_EQ(line[line_at + 3], -1.0F);
    EXPECT_FLOAT_EQ(line[0], 0.0F);
    for (const float value : line) {
        EXPECT_FALSE(std::isnan(value));
    }
}

} // namespace
} // namespace pithward::boundary
