#include "libimaging/boundary/wood/wood_model.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

namespace pithward::test {
namespace {

using namespace boundary;

constexpr double px_mm = 0.02;
constexpr double blur_mm = 0.03;

/// From 0 to 1 at a place, as sharply as the scanner lets it.
double step(double s_mm, double at_mm) {
    return 0.5 * std::erfc((at_mm - s_mm) / (std::sqrt(2.0) * blur_mm));
}

/// Rings of a millimetre: the tone falls at once at each boundary, and comes back bit by bit.
double rings(double s_mm) {
    double tone = 0.0;
    for (int k = 0; k < 40; ++k) {
        const double inward = s_mm - k;
        tone -= 0.5 * step(s_mm, k) * std::clamp(1.0 - inward / 0.5, 0.0, 1.0);
    }
    return tone;
}

/// A dark band within a ring, as sharp on the outer side as on the inner one.
double band(double s_mm, double from_mm) {
    return -0.4 * step(s_mm, from_mm) * (1.0 - step(s_mm, from_mm + 0.25));
}

FlatStrip strip_of(const std::vector<double>& bands_mm) {
    FlatStrip strip;
    strip.px_mm = px_mm;
    strip.path_mm = 40.0;
    strip.start_mm = -1.5;
    const cv::Size size(static_cast<int>(43.0 / px_mm), 61);
    strip.signal = cv::Mat1f(size);
    std::minstd_rand random(7);
    std::normal_distribution<float> noise(0.0F, 0.02F);
    for (int c = 0; c < size.width; ++c) {
        double tone = rings(strip.s(c));
        for (const double from : bands_mm) {
            tone += band(strip.s(c), from);
        }
        for (int lane = 0; lane < size.height; ++lane) {
            strip.signal(lane, c) = static_cast<float>(tone) + noise(random);
        }
    }
    strip.tone = strip.signal;
    strip.weight = cv::Mat1f(size, 1.0F);
    strip.flow_mm = cv::Mat1f::zeros(size);
    return strip;
}

const Mark& mark_at(const FlatStrip& strip, const std::vector<Mark>& marks, double s_mm) {
    return *std::ranges::min_element(marks, {},
                                     [&](const Mark& mark) { return std::abs(strip.s(mark.column) - s_mm); });
}

TEST(ConiferMarks, BoundariesAreSure) {
    const FlatStrip strip = strip_of({});
    const std::vector<Mark> marks = wood_model(WoodType::Conifer).marks(strip);
    for (int s = 3; s < 37; ++s) {
        const Mark& mark = mark_at(strip, marks, s);
        EXPECT_NEAR(strip.s(mark.column), s, px_mm);
        EXPECT_GT(mark.log_odds, 3.0) << s;
    }
}

TEST(ConiferMarks, ABandAlikeOnBothSidesIsLessSureThanABoundary) {
    const FlatStrip strip = strip_of({10.65, 20.65, 30.65});
    const std::vector<Mark> marks = wood_model(WoodType::Conifer).marks(strip);
    for (const double from : {10.65, 20.65, 30.65}) {
        const Mark& mark = mark_at(strip, marks, from);
        ASSERT_NEAR(strip.s(mark.column), from, 2.0 * px_mm);
        EXPECT_GT(mark.signs.fall, 0.6 * mark_at(strip, marks, 15.0).signs.fall) << "it falls like a boundary";
        EXPECT_LT(mark.log_odds, mark_at(strip, marks, 15.0).log_odds - 2.5);
    }
}

} // namespace
} // namespace pithward::test
