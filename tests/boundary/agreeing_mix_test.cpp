#include "libimaging/boundary/agreeing_mix.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace pithward::boundary {
namespace {

/// 31 lanes of 0.1 mm. Lines that cross all lanes and spots strewn over them, each with its colour, and noise.
std::array<cv::Mat1f, 3> lines_and_spots(const std::array<float, 3>& line, const std::array<float, 3>& spot) {
    std::array<cv::Mat1f, 3> channels;
    for (cv::Mat1f& channel : channels) {
        channel = cv::Mat1f::zeros(31, 2000);
    }
    std::mt19937 random(5);
    std::normal_distribution<float> noise(0.0F, 0.02F);
    for (int row = 0; row < 31; ++row) {
        for (int column = 0; column < 2000; ++column) {
            const float on_line = column % 50 < 3 ? 1.0F : 0.0F;
            const float on_spot = random() % 5 == 0 ? 1.0F : 0.0F;
            for (std::size_t c = 0; c < 3; ++c) {
                channels[c](row, column) = on_line * line[c] + on_spot * spot[c] + noise(random);
            }
        }
    }
    return channels;
}

double strength(const std::array<double, 3>& mix, const std::array<float, 3>& colour) {
    return std::abs(mix[0] * static_cast<double>(colour[0]) + mix[1] * static_cast<double>(colour[1]) +
                    mix[2] * static_cast<double>(colour[2]));
}

TEST(AgreeingMix, ShowsTheLinesAndNotTheSpots) {
    const std::array<float, 3> line{-0.1F, -0.2F, -0.3F};
    const std::array<float, 3> spot{-0.5F, -0.6F, -0.65F};
    const auto mix = agreeing_mix(lines_and_spots(line, spot), 0.1);
    EXPECT_GT(strength(mix, line), 3.0 * strength(mix, spot));
}

TEST(AgreeingMix, OfAGreyScanIsFinite) {
    std::array<cv::Mat1f, 3> grey = lines_and_spots({-0.2F, -0.2F, -0.2F}, {-0.5F, -0.5F, -0.5F});
    grey[1] = grey[0];
    grey[2] = grey[0];
    const auto mix = agreeing_mix(grey, 0.1);
    EXPECT_GT(strength(mix, {1.0F, 1.0F, 1.0F}), 0.5);
    for (const double share :
         agreeing_mix({cv::Mat1f::zeros(31, 100), cv::Mat1f::zeros(31, 100), cv::Mat1f::zeros(31, 100)}, 0.1)) {
        EXPECT_TRUE(std::isfinite(share));
    }
}

} // namespace
} // namespace pithward::boundary
