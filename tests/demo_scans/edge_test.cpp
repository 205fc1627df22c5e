#include "tests/demo_scans/scenes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace pithward::demo {
namespace {

double luminance(const Picture& picture, int x, int y) {
    const std::uint8_t* p = picture.pixels.data() + 3 * (static_cast<std::ptrdiff_t>(y) * picture.width + x);
    return 0.299 * p[0] + 0.587 * p[1] + 0.114 * p[2];
}

/// Cubic interpolation through four neighbours on each axis (Keys 1981, a = -1/2).
double value_at(const Picture& picture, double x, double y) {
    const auto weights = [](double t) {
        return std::array{0.5 * (-t + 2 * t * t - t * t * t), 0.5 * (2 - 5 * t * t + 3 * t * t * t),
                          0.5 * (t + 4 * t * t - 3 * t * t * t), 0.5 * (-t * t + t * t * t)};
    };
    const int ix = static_cast<int>(std::floor(x));
    const int iy = static_cast<int>(std::floor(y));
    const auto wx = weights(x - ix);
    const auto wy = weights(y - iy);
    double sum = 0.0;
    for (int j = 0; j < 4; ++j) {
        for (int i = 0; i < 4; ++i) {
            sum += wx[static_cast<std::size_t>(i)] * wy[static_cast<std::size_t>(j)] *
                   luminance(picture, ix - 1 + i, iy - 1 + j);
        }
    }
    return sum;
}

/// How far inside the true boundary the half-way level lies, in px square to it; the two levels are those two to three
/// pixels off. Knows nothing of how the picture was made.
std::optional<double> error_of(const Picture& picture, const TrueBoundary& boundary, ImagePoint inward) {
    const double tangent = radians(boundary.angle_deg);
    ImagePoint normal{-std::sin(tangent), std::cos(tangent)};
    if (normal.x * inward.x + normal.y * inward.y < 0.0) {
        normal = normal * -1.0;
    }
    const auto at = [&](double s) { // mean along four pixels of the boundary
        double sum = 0.0;
        for (int i = -4; i <= 4; ++i) {
            const double t = 0.5 * i;
            sum += value_at(picture, boundary.at.x + s * normal.x + t * std::cos(tangent),
                            boundary.at.y + s * normal.y + t * std::sin(tangent)) /
                   9.0;
        }
        return sum;
    };
    const auto level = [&](double from) {
        return 0.25 * (at(from) + at(from + 0.3) + at(from + 0.6) + at(from + 0.9));
    };
    const double latewood = level(2.0);
    const double earlywood = level(-2.9);
    if (earlywood - latewood < 25.0) {
        return std::nullopt;
    }
    const double half = 0.5 * (latewood + earlywood);
    for (int i = -150; i < 150; ++i) {
        const double s = 0.01 * i;
        if ((at(s) - half) * (at(s + 0.01) - half) <= 0.0) {
            return s + 0.01 * (at(s) - half) / (at(s) - at(s + 0.01));
        }
    }
    return 9.0;
}

class LatewoodEdge : public testing::TestWithParam<double> {};

TEST_P(LatewoodEdge, LiesWhereTheTruthSays) {
    Scene scene = noise_free(short_core());
    scene.dpi = GetParam();
    scene.growth.rings = 28;
    scene.growth.mean_mm = 1.3;
    scene.tilt_deg = 8.0; // aslant to the pixels, so that interpolation between them averages out
    scene.timber = Timber::Larch;
    scene.pith_offset_mm = 2.5;
    const Rendering r = rendered(scene);
    std::vector<double> errors;
    for (std::size_t i = 1; i + 1 < r.truth.boundaries.size(); ++i) {
        const double narrower = std::min(*r.truth.widths[i - 1].radial_mm, *r.truth.widths[i].radial_mm);
        if (narrower < 0.8) { // too few pixels for two even levels
            continue;
        }
        if (const auto e =
                error_of(r.picture, r.truth.boundaries[i], r.truth.boundaries[i + 1].at - r.truth.boundaries[i].at)) {
            errors.push_back(*e);
        }
    }
    ASSERT_GT(errors.size(), 15U);
    double mean = 0.0;
    for (const double e : errors) {
        EXPECT_LT(std::abs(e), 0.05);
        mean += e / static_cast<double>(errors.size());
    }
    EXPECT_LT(std::abs(mean), 0.02);
}

INSTANTIATE_TEST_SUITE_P(Resolutions, LatewoodEdge, testing::Values(1200.0, 2400.0));

} // namespace
} // namespace pithward::demo
