#include "tests/demo_scans/scenes.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <numeric>

namespace pithward::demo {
namespace {

double distance_mm(ImagePoint a, ImagePoint b, double dpi) {
    return std::hypot(a.x - b.x, a.y - b.y) * 25.4 / dpi;
}

double sum_along(const Truth& truth) {
    return std::accumulate(truth.widths.begin(), truth.widths.end(), 0.0,
                           [](double sum, const TrueWidth& w) { return sum + w.along_path_mm.value_or(0.0); });
}

TEST(Truth, AlongPathWidthsAddUpToThePath) {
    Scene scene = short_core();
    scene.tilt_deg = 1.7;
    const Truth truth = rendered(scene).truth;
    ASSERT_EQ(truth.boundaries.size(), truth.widths.size() + 1);
    EXPECT_NEAR(sum_along(truth), distance_mm(truth.boundaries.front().at, truth.boundaries.back().at, scene.dpi),
                1e-6);
}

TEST(Truth, GivenWidthsComeBackSquareToTheRings) {
    Scene scene = short_core();
    scene.widths_mm = {1.2, 0.8, 0.45, 1.9, 0.0, 0.7, 1.1, 0.3, 1.4, 2.2};
    scene.pith_offset_mm = -3.5;
    scene.bark_left = false;
    scene.tilt_deg = -2.0;
    const Truth truth = rendered(scene).truth;
    ASSERT_EQ(truth.widths.size(), scene.widths_mm.size());
    for (std::size_t i = 0; i < truth.widths.size(); ++i) {
        EXPECT_NEAR(truth.widths[i].radial_mm.value_or(-1.0), scene.widths_mm[i], 0.001) << "ring " << i;
        EXPECT_GE(*truth.widths[i].along_path_mm + 1e-3, *truth.widths[i].radial_mm);
    }
    EXPECT_EQ(truth.widths[4].radial_mm, 0.0);
    EXPECT_EQ(truth.boundaries[4].why_invisible, "absent");
}

TEST(Truth, YearsFallByOneFromTheLastCompleteRing) {
    Scene scene = short_core();
    scene.unfinished_mm = 0.3;
    const Truth truth = rendered(scene).truth;
    EXPECT_EQ(truth.last_complete_ring_year, scene.last_year);
    for (std::size_t i = 0; i < truth.boundaries.size(); ++i) {
        EXPECT_EQ(truth.boundaries[i].year.value(), scene.last_year.value() - static_cast<int>(i));
    }
    ASSERT_TRUE(truth.bark_edge.has_value());
    EXPECT_NEAR(distance_mm(*truth.bark_edge, truth.boundaries.front().at, scene.dpi), 0.3, 0.02);
}

TEST(Truth, TheFirstBoundaryOfACoreWithoutItsOuterWoodIsTheFirstThatIsLeft) {
    Scene scene = short_core();
    scene.widths_mm.assign(12, 1.0);
    scene.lost_outer_mm = 2.5;
    const Truth truth = rendered(scene).truth;
    EXPECT_EQ(truth.last_complete_ring_year.value(), scene.last_year.value() - 3);
    EXPECT_EQ(truth.boundaries.size(), 10U);
}

TEST(Truth, ACrackTakesNothingFromTheWidths) {
    Scene scene = short_core();
    const Truth whole = rendered(scene).truth;
    scene.disturbances.cracks = {{.year = scene.last_year.value() - 6, .gap_mm = 0.8}};
    const Truth cracked = rendered(scene).truth;
    ASSERT_EQ(whole.widths.size(), cracked.widths.size());
    for (std::size_t i = 0; i < whole.widths.size(); ++i) {
        EXPECT_NEAR(*whole.widths[i].radial_mm, *cracked.widths[i].radial_mm, 1e-6);
        EXPECT_NEAR(*whole.widths[i].along_path_mm, *cracked.widths[i].along_path_mm, 0.02); // the path's step
    }
    const double length = distance_mm(cracked.boundaries.front().at, cracked.boundaries.back().at, scene.dpi);
    EXPECT_NEAR(length - sum_along(cracked), 0.8, 0.03);
}

TEST(Truth, LostWoodLeavesItsRingsWithoutAWidth) {
    Scene scene = short_core();
    scene.disturbances.lost = {{.years = {scene.last_year.value() - 7, scene.last_year.value() - 5}}};
    const Truth truth = rendered(scene).truth;
    for (const TrueWidth& width : truth.widths) {
        const int age = scene.last_year - width.year;
        EXPECT_EQ(width.radial_mm.has_value(), age < 5 || age > 7) << width.year.value();
    }
    EXPECT_EQ(truth.boundaries[6].why_invisible, "gap");
    EXPECT_TRUE(truth_json(truth)["widths"][6]["radial_mm"].is_null());
}

TEST(Truth, ThePithOnTheCoreEndsThePathAndTheInnermostRing) {
    Scene scene = short_core();
    scene.rings_to_pith = 0;
    scene.pith_offset_mm = 0.3;
    const Truth truth = rendered(scene).truth;
    EXPECT_TRUE(truth.pith.inside);
    EXPECT_EQ(truth.pith.missing_rings, 0);
    EXPECT_EQ(truth.widths.size(), truth.boundaries.size());
    EXPECT_NEAR(truth.pith.distance_mm, 0.0, 1e-6);
    EXPECT_NEAR(*truth.widths.back().radial_mm, distance_mm(truth.boundaries.back().at, truth.pith.at, scene.dpi),
                1e-6);
}

TEST(Truth, ThePithBesideTheCoreLiesWhereTheSceneSays) {
    Scene scene = short_core();
    scene.pith_offset_mm = 6.0;
    const Truth truth = rendered(scene).truth;
    EXPECT_FALSE(truth.pith.inside);
    EXPECT_NEAR((truth.pith.at.y - truth.path.back().y) * 25.4 / scene.dpi, 6.0, 1e-6);
    EXPECT_GE(truth.pith.missing_rings, scene.rings_to_pith);
}

TEST(Truth, ARingThinnerThanAPixelIsMarked) {
    Scene scene = short_core();
    scene.widths_mm = {1.0, 1.0, 0.02, 1.0, 1.0};
    const Truth truth = rendered(scene).truth;
    EXPECT_EQ(truth.boundaries[3].why_invisible, "too_thin");
}

TEST(Truth, CoresOfATrayLieBelowEachOther) {
    Scene first = short_core();
    Scene second = short_core();
    first.name = "A";
    second.name = "B";
    second.seed = 2;
    second.bark_left = false;
    const auto tray = render_tray({first, second});
    ASSERT_TRUE(tray.has_value());
    ASSERT_EQ(tray->truths.size(), 2U);
    EXPECT_GT(tray->truths[1].path[0].y, tray->truths[0].path[0].y + first.core_width_mm * first.dpi / 25.4);
    EXPECT_EQ(tray->truths[1].name, "B");
    EXPECT_LT(tray->truths[1].path.back().x, tray->truths[1].path.front().x);
}

TEST(Scene, NonsenseIsRefusedInPlainWords) {
    Scene scene = short_core();
    scene.dpi = 0.0;
    EXPECT_EQ(render(scene).error().what, "the resolution is not between 100 and 10,000 dpi");
    scene = short_core();
    scene.widths_mm = {0.0, 0.0, 0.0};
    EXPECT_FALSE(render(scene).has_value());
    scene = short_core();
    scene.rings_to_pith = 0;
    scene.pith_offset_mm = 7.0;
    EXPECT_FALSE(render(scene).has_value());
}

} // namespace
} // namespace pithward::demo
