#include "libimaging/boundary/find_cores.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace pithward::test {
namespace {

constexpr double px_of_a_mm = 1200.0 / 25.4;

double distance_mm(ImagePoint a, ImagePoint b) {
    return std::hypot(a.x - b.x, a.y - b.y) / px_of_a_mm;
}

/// A core with its pith on it, `past_mm` of wood beyond it.
demo::Scene past_pith(int number, demo::Timber timber, double past_mm) {
    demo::Scene scene = clear_scene(640, number, 30);
    scene.dpi = 1200.0;
    scene.timber = timber;
    scene.widths_mm.clear();
    scene.growth = {.rings = 28, .mean_mm = 1.1};
    scene.rings_to_pith = 0;
    scene.pith_offset_mm = 0.6;
    scene.past_pith_mm = past_mm;
    return scene;
}

std::vector<FoundCore> found_on(const RenderedScan& scan) {
    const auto found = find_cores(scan.scan, scan.calibration);
    EXPECT_TRUE(found.has_value());
    return found.value_or(std::vector<FoundCore>{});
}

TEST(PithCrossing, ACoreThatGoesPastThePithGivesTwoPathsFromBarkToPith) {
    const TemporaryFolder folder;
    int number = 0;
    for (const demo::Timber timber : {demo::Timber::Pine, demo::Timber::Spruce, demo::Timber::Oak}) {
        SCOPED_TRACE(demo::word(timber));
        ++number;
        demo::Scene scene = past_pith(number, timber, number == 2 ? 12.0 : 1000.0);
        scene.bark_left = number % 2 == 0;
        const RenderedScan core = rendered_scan(folder, scene);
        const std::vector<FoundCore> found = found_on(core);
        ASSERT_EQ(found.size(), 2U);
        const ImagePoint pith = core.truth().pith.at;
        for (const FoundCore& side : found) {
            ASSERT_TRUE(side.pith.has_value());
            EXPECT_LT(distance_mm(side.path.back(), pith), 1.0);
            EXPECT_EQ(side.path.back(), side.pith->at);
            EXPECT_GT(distance_mm(side.path.front(), pith), 8.0);
        }
        EXPECT_LT((found[0].path.front().x - pith.x) * (found[1].path.front().x - pith.x), 0.0) << "one on each side";
        const auto nearest = std::ranges::min(found, {}, [&](const FoundCore& side) {
            return distance_mm(side.path.front(), core.truth().path.front());
        });
        EXPECT_LT(distance_mm(nearest.path.front(), core.truth().path.front()), 3.5);
    }
}

TEST(PithCrossing, ACoreThatEndsAtThePithGivesOnePathThatEndsThere) {
    const TemporaryFolder folder;
    const RenderedScan core = rendered_scan(folder, past_pith(5, demo::Timber::Pine, 1.5));
    const std::vector<FoundCore> found = found_on(core);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_LT(distance_mm(found[0].path.back(), core.truth().pith.at), 2.0);
    EXPECT_LT(distance_mm(found[0].path.front(), core.truth().path.front()), 3.5);
}

TEST(PithCrossingTrial, OrdinaryCoresAreNotSplit) {
    const TemporaryFolder folder;
    for (const demo::Timber timber : {demo::Timber::Pine, demo::Timber::Oak, demo::Timber::Maple}) {
        demo::Scene scene = past_pith(7, timber, 0.0);
        scene.rings_to_pith = 6;
        scene.pith_offset_mm = 2.0;
        const std::vector<FoundCore> found = found_on(rendered_scan(folder, scene));
        ASSERT_EQ(found.size(), 1U) << demo::word(timber);
        EXPECT_FALSE(found[0].pith.has_value()) << demo::word(timber);
    }
}

TEST(PithCrossing, BothSidesAreReadAndGrewInTheSameYears) {
    const TemporaryFolder folder;
    const RenderedScan core = rendered_scan(folder, past_pith(9, demo::Timber::Spruce, 1000.0));
    const std::vector<FoundCore> found = found_on(core);
    ASSERT_EQ(found.size(), 2U);
    for (const FoundCore& side : found) {
        const auto reading = propose_reading(core.scan, request_for(side, "core", core.calibration));
        ASSERT_TRUE(reading.has_value()) << reading.error().line();
        EXPECT_NEAR(static_cast<double>(reading->boundaries.size()), 28.0, 2.0);
    }
}

TEST(PithCrossing, ADoubtfulPithIsAFinding) {
    Reading reading;
    reading.path.legs = {Leg{"scan", {{0.0, 0.0}, {100.0, 0.0}}, {}}};
    boundary::add_seen_pith(reading, PithOnCore{{100.0, 0.0}, 0.99, true});
    EXPECT_TRUE(reading.findings.empty()) << "a sure one is none";
    boundary::add_seen_pith(reading, PithOnCore{{100.0, 0.0}, 0.8, true});
    boundary::add_seen_pith(reading, PithOnCore{{50.0, 0.0}, 0.3, false});
    ASSERT_EQ(reading.findings.size(), 2U);
    EXPECT_EQ(reading.findings[0].kind, FindingKind::PastPith);
    EXPECT_NEAR(reading.findings[0].probability, 0.2, 1e-9);
    EXPECT_NEAR(reading.findings[1].probability, 0.3, 1e-9);
    EXPECT_EQ(reading.findings[1].at, (ImagePoint{50.0, 0.0}));
}

} // namespace
} // namespace pithward::test
