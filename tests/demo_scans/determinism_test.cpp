#include "demo-scans/maker/random.h"
#include "tests/demo_scans/scenes.h"

#include <cmath>

namespace pithward::demo {
namespace {

TEST(Render, TheSameSceneGivesTheSamePixels) {
    const Rendering once = rendered(short_core());
    const Rendering again = rendered(short_core());
    EXPECT_EQ(once.picture.width, again.picture.width);
    EXPECT_TRUE(once.picture.pixels == again.picture.pixels);
}

TEST(Render, AnotherSeedGivesAnotherTree) {
    Scene other = short_core();
    other.seed = 2;
    EXPECT_NE(rendered(short_core()).truth.widths[3].radial_mm, rendered(other).truth.widths[3].radial_mm);
}

TEST(Render, TheSurfaceDoesNotMoveTheRings) {
    const Truth with = rendered(short_core()).truth;
    const Truth without = rendered(noise_free(short_core())).truth;
    ASSERT_EQ(with.boundaries.size(), without.boundaries.size());
    for (std::size_t i = 0; i < with.boundaries.size(); ++i) {
        EXPECT_EQ(with.boundaries[i].at, without.boundaries[i].at);
    }
}

TEST(Random, NumbersAreFixed) {
    // SplitMix64 from state 0, the first number of its published sequence.
    EXPECT_EQ(mix(0, 0), 0xE220A8397B1DCDAFULL);
    double sum = 0.0;
    double squares = 0.0;
    Random random(7);
    constexpr int count = 20'000;
    for (int i = 0; i < count; ++i) {
        const double x = random.normal();
        sum += x;
        squares += x * x;
    }
    EXPECT_NEAR(sum / count, 0.0, 0.03);
    EXPECT_NEAR(std::sqrt(squares / count), 1.0, 0.03);
}

} // namespace
} // namespace pithward::demo
