// How right the program is on clear conifer cores that it was not fitted to: new seeds, rendered in place.
#include "libcore/measure/measure.h"
#include "tests/support/matching.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>

namespace pithward::test {
namespace {

constexpr std::uint64_t seed = 88001;

/// What six cores add up to.
struct Sums {
    int visible = 0;
    int found = 0;
    int proposed = 0;
    int spurious = 0;
    int steps_wrong = 0;           ///< Neighbouring boundaries whose years step otherwise than the true ones.
    std::vector<double> errors_px; ///< Of the boundaries inside the wood.
    std::vector<double> z;         ///< The same against their own deviations.
};

/// Four cores at 1200 dpi and two shorter ones at 2400.
std::vector<demo::Scene> scenes() {
    std::vector<demo::Scene> all;
    for (int number = 1; number <= 6; ++number) {
        demo::Scene scene = clear_scene(seed, number, number > 4 ? 30 : 70);
        scene.dpi = number > 4 ? 2400.0 : 1200.0;
        all.push_back(std::move(scene));
    }
    return all;
}

void add_core(const demo::Scene& scene, Sums& sums) {
    const TemporaryFolder folder;
    const RenderedScan core = rendered_scan(folder, scene);
    const Reading reading = read_along_truth(core);
    const Matching matching = match(reading, core.truth());
    sums.visible += matching.visible;
    sums.found += matching.found;
    sums.proposed += matching.proposed;
    sums.spurious += matching.spurious - matching.in_bark; // the bark has its own test
    const RingSeries series = measure(reading).value();
    std::optional<int> off;
    for (const Match& pair : matching.matches) {
        const demo::TrueBoundary& truth = core.truth().boundaries[pair.truth];
        const int years_off = *series.boundaries[pair.boundary].year - truth.year;
        sums.steps_wrong += years_off == off.value_or(years_off) ? 0 : 1;
        off = years_off;
        if (truth.visible && !truth.at_bark) {
            sums.errors_px.push_back(pair.error_px);
            sums.z.push_back(pair.error_px / core.calibration.px_per_mm() /
                             reading.boundaries[pair.boundary].sd.value());
        }
    }
}

std::vector<double> magnitudes(std::vector<double> values) {
    for (double& value : values) {
        value = std::abs(value);
    }
    return values;
}

// One test, so that the cores are rendered once.
TEST(ClearConifers, AreFoundPlacedAndDatedRight) {
    Sums sums;
    for (const demo::Scene& scene : scenes()) {
        add_core(scene, sums);
    }
    const double error = median(magnitudes(sums.errors_px));
    const double bias = median(sums.errors_px);
    // 1.4826 times the median magnitude is the standard deviation of a normal distribution.
    const double spread = 1.4826 * median(magnitudes(sums.z));
    std::printf("%d visible boundaries, %d found, %d proposed, %d spurious, %d steps wrong\n", sums.visible, sums.found,
                sums.proposed, sums.spurious, sums.steps_wrong);
    std::printf("median error %.3f px, bias %+.3f px, errors over their deviations %.2f\n", error, bias, spread);

    ASSERT_GT(sums.visible, 250);
    EXPECT_GE(sums.found, 0.99 * sums.visible);
    EXPECT_LE(sums.spurious, 0.01 * sums.proposed);
    EXPECT_EQ(sums.steps_wrong, 0);
    EXPECT_LT(error, 0.5);
    EXPECT_LT(std::abs(bias), 0.1);
    EXPECT_GT(spread, 0.5);
    EXPECT_LT(spread, 1.5);
}

TEST(ClearConifers, TheOutermostRingEndsAtTheEdgeOfTheWood) {
    // One boundary too many in the bark moves all years of a core.
    for (int number = 1; number <= 6; ++number) {
        const TemporaryFolder folder;
        const RenderedScan core = rendered_scan(folder, clear_scene(seed, number, 14));
        const Reading reading = read_along_truth(core);
        const RingSeries series = measure(reading).value();
        const Matching matching = match(reading, core.truth());
        EXPECT_EQ(matching.in_bark, 0) << "core " << number;
        for (const Match& pair : matching.matches) {
            ASSERT_EQ(series.boundaries[pair.boundary].year->value(), core.truth().boundaries[pair.truth].year.value())
                << "core " << number;
        }
    }
}

} // namespace
} // namespace pithward::test
