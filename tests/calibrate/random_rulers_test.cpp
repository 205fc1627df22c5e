#include "libimaging/calibrate/ruler_scale.h"
#include "tests/support/matching.h"
#include "tests/support/random_ruler.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::test {
namespace {

/// A small part of ruler_study, which is run by hand (docs/calibration.md).
TEST(RandomRulersTrial, AreReadRightAndTheirDeviationsHold) {
    const TemporaryFolder folder;
    std::vector<double> normalised;
    int refused = 0;
    constexpr int rulers = 16;
    for (std::uint64_t seed = 90'001; seed < 90'001 + rulers; ++seed) {
        const RandomRuler ruler = random_ruler(seed, 1200.0);
        const RulerScan scan = scanned(folder, ruler);
        const auto scale = scale_along(scan.scan, scan.line, std::nullopt, std::nullopt);
        if (!scale) {
            ++refused;
            continue;
        }
        ASSERT_EQ(scale->graduation, ruler.graduation) << "seed " << seed;
        const double truth =
            std::hypot(scale->normal.x * ruler.look.px_per_mm_x, scale->normal.y * ruler.look.px_per_mm_y);
        const double error = scale->px_per_mm / truth - 1.0;
        EXPECT_LT(std::abs(error), 0.001) << "seed " << seed;
        EXPECT_LT(std::abs(error), 6.0 * scale->relative_sd) << "seed " << seed;
        normalised.push_back(std::abs(error) / scale->relative_sd);
    }
    EXPECT_LE(refused, 2); // short and worn ones
    const double spread = 1.4826 * median(normalised);
    EXPECT_GT(spread, 0.5);
    EXPECT_LT(spread, 1.6);
}

} // namespace
} // namespace pithward::test
