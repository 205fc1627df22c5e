#include "libimaging/boundary/edge_fit.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace pithward::boundary {
namespace {

/// A dark zone between a sharp edge and a soft change back, blurred by summing many sharp ones: an oracle that shares
/// no code with the model.
std::vector<float> blurred_profile(const EdgeFit& edge, double blur, int columns) {
    constexpr int fine = 40;
    constexpr double reach = 5.0;
    const double ramp = std::sqrt(std::max(edge.soft * edge.soft - blur * blur, 1e-6)); // before blurring
    std::vector<float> out;
    for (int c = 0; c < columns; ++c) {
        double sum = 0.0;
        double mass = 0.0;
        for (int k = static_cast<int>(-reach * blur * fine); k <= reach * blur * fine; ++k) {
            const double d = static_cast<double>(k) / fine;
            const double x = c + d;
            const double weight = std::exp(-0.5 * d * d / (blur * blur));
            const double back = 0.5 * std::erfc((edge.column + edge.breadth - x) / (ramp * std::sqrt(2.0)));
            sum += weight *
                   (edge.light - edge.depth * std::clamp((x - edge.column) * fine + 0.5, 0.0, 1.0) + edge.depth * back);
            mass += weight;
        }
        out.push_back(static_cast<float>(sum / mass));
    }
    return out;
}

TEST(EdgeFit, TheModelIsABlurredEdge) {
    const EdgeFit edge{.column = 20.3, .light = 0.8, .depth = 0.4, .breadth = 7.0, .soft = 3.0};
    const auto profile = blurred_profile(edge, 1.4, 45);
    for (std::size_t c = 0; c < profile.size(); ++c) {
        EXPECT_NEAR(blurred_edge(edge, 1.4, static_cast<double>(c)), profile[c], 0.005);
    }
}

TEST(EdgeFit, FindsTheEdgeToAHundredthOfAPixel) {
    const unsigned seed = 90210;
    std::mt19937 random(seed);
    const auto between = [&](double low, double high) { return std::uniform_real_distribution(low, high)(random); };
    for (int i = 0; i < 100; ++i) {
        const double blur = between(1.0, 2.0);
        const EdgeFit edge{.column = between(19.0, 21.0),
                           .light = between(0.5, 0.9),
                           .depth = between(0.1, 0.4),
                           .breadth = between(2.0, 10.0) * blur,
                           .soft = blur * between(1.3, 3.0)};
        EdgeFit start = edge;
        start.column += between(-0.7, 0.7);
        start.light += between(-0.03, 0.03);
        start.depth *= between(0.8, 1.2);
        const auto fit = fit_edge(blurred_profile(edge, blur, 60), 8, 50, blur, start);
        ASSERT_TRUE(fit.has_value()) << "seed " << seed << ", case " << i;
        EXPECT_NEAR(fit->column, edge.column, 0.01) << "seed " << seed << ", case " << i;
    }
}

TEST(EdgeFit, AThinDarkLineIsNotPulledToItsLightSide) {
    // The half-level of the blurred line lies outside the true edge by more than a tenth of a pixel.
    const double blur = 1.5;
    const EdgeFit line{.column = 20.0, .light = 0.8, .depth = 0.5, .breadth = 2.0, .soft = 1.8};
    const auto profile = blurred_profile(line, blur, 45);
    const auto fit = fit_edge(profile, 10, 36, blur, line);
    ASSERT_TRUE(fit.has_value());
    EXPECT_NEAR(fit->column, 20.0, 0.02);
    std::size_t darkest = 0;
    for (std::size_t c = 1; c < profile.size(); ++c) {
        darkest = profile[c] < profile[darkest] ? c : darkest;
    }
    const float half = 0.5F * (0.8F + profile[darkest]);
    std::size_t c = darkest;
    while (profile[c] < half) {
        --c;
    }
    const double half_level =
        static_cast<double>(c) + static_cast<double>((profile[c] - half) / (profile[c] - profile[c + 1]));
    EXPECT_LT(half_level, 19.9);
}

TEST(EdgeFit, RefusesWhatIsNoEdge) {
    const EdgeFit start{.column = 20.0, .light = 0.8, .depth = 0.3, .breadth = 5.0, .soft = 2.0};
    std::vector<float> rising(40);
    for (std::size_t c = 0; c < rising.size(); ++c) {
        rising[c] = 0.02F * static_cast<float>(c);
    }
    EXPECT_FALSE(fit_edge(rising, 0, 39, 1.2, start).has_value());
    EXPECT_FALSE(fit_edge(rising, 18, 21, 1.2, start).has_value()) << "too few columns";
    EXPECT_FALSE(fit_edge({}, 0, 39, 1.2, start).has_value());
    EdgeFit light = start;
    light.depth = 0.0;
    EXPECT_FALSE(fit_edge(rising, 0, 39, 1.2, light).has_value());
}

} // namespace
} // namespace pithward::boundary
