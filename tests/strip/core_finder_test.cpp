#include "libimaging/strip/core_finder.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>
#include <opencv2/imgproc.hpp>

#include <cmath>
#include <random>

namespace pithward::test {
namespace {

constexpr double dpi = 600.0; // the finder looks at 12 px/mm; rendering at less is quick
constexpr double px_per_mm = dpi / 25.4;

demo::Scene coarse_scene(int number) {
    demo::Scene scene = clear_scene(700, number, 40);
    scene.dpi = dpi;
    return scene;
}

/// Distance of a place from a polyline that goes on straight beyond its ends, mm.
double off_mm(ImagePoint p, const std::vector<ImagePoint>& line) {
    double nearest = 1e9;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const ImagePoint step = line[i + 1] - line[i];
        const ImagePoint away = p - line[i];
        double share = (away.x * step.x + away.y * step.y) / (step.x * step.x + step.y * step.y);
        share = i == 0 ? share : std::max(share, 0.0);
        share = i + 2 == line.size() ? share : std::min(share, 1.0);
        nearest = std::min(nearest, std::hypot(away.x - share * step.x, away.y - share * step.y));
    }
    return nearest / px_per_mm;
}

double apart_mm(ImagePoint a, ImagePoint b) {
    return std::hypot(a.x - b.x, a.y - b.y) / px_per_mm;
}

/// The outline lies along the true path and is about as long. The path leaves out the bark, which the outline may hold.
void expect_along(const CoreOutline& core, const demo::Truth& truth, double bark_mm) {
    for (const ImagePoint& point : core.path) {
        EXPECT_LT(off_mm(point, truth.path), 0.5) << point.x << ", " << point.y;
    }
    const bool forward =
        apart_mm(core.path.front(), truth.path.front()) < apart_mm(core.path.front(), truth.path.back());
    const ImagePoint bark = forward ? core.path.front() : core.path.back();
    const ImagePoint pith = forward ? core.path.back() : core.path.front();
    EXPECT_LT(apart_mm(bark, truth.path.front()), 3.0 + bark_mm);
    EXPECT_LT(apart_mm(pith, truth.path.back()), 3.0 + truth.pith.distance_mm);
}

cv::Mat image_of(const demo::Picture& picture) {
    cv::Mat image(picture.height, picture.width, CV_8UC3);
    std::copy(picture.pixels.begin(), picture.pixels.end(), image.data);
    return image;
}

demo::Rendering rendered(const demo::Scene& scene) {
    return demo::render(scene).value();
}

TEST(CoreFinder, FindsTiltedAndBowedCores) {
    int number = 0;
    for (const auto& [tilt, bow] :
         {std::pair{-4.0, 0.0}, {-2.0, 0.8}, {0.0, 0.0}, {0.0, -1.2}, {2.0, 0.5}, {4.0, 0.0}}) {
        SCOPED_TRACE(std::to_string(tilt) + " degrees, bow " + std::to_string(bow));
        demo::Scene scene = coarse_scene(++number);
        scene.tilt_deg = tilt;
        scene.bow_mm = bow;
        scene.bark_left = number % 2 == 0;
        const demo::Rendering core = rendered(scene);
        const auto found = outline_cores(image_of(core.picture), px_per_mm);
        ASSERT_EQ(found.size(), 1U);
        expect_along(found[0], core.truth, scene.bark_mm);
        EXPECT_NEAR(found[0].width_mm, scene.core_width_mm, 1.2);
    }
}

TEST(CoreFinder, FindsCoresThatLieAcrossTheScan) {
    const demo::Scene scene = coarse_scene(3);
    demo::Rendering core = rendered(scene);
    cv::Mat turned;
    cv::transpose(image_of(core.picture), turned);
    for (ImagePoint& point : core.truth.path) {
        std::swap(point.x, point.y);
    }
    const auto found = outline_cores(turned, px_per_mm);
    ASSERT_EQ(found.size(), 1U);
    expect_along(found[0], core.truth, scene.bark_mm);
    EXPECT_LT(found[0].path.front().y, found[0].path.back().y) << "from top to bottom";
}

TEST(CoreFinder, FindsEachCoreOfATrayFromTheTopDown) {
    demo::Scene first = coarse_scene(4);
    demo::Scene second = coarse_scene(5);
    second.bark_left = !first.bark_left;
    const TemporaryFolder folder;
    const RenderedScan tray = rendered_tray(folder, {first, second});
    const auto found = outline_cores(tray.scan, tray.calibration);
    ASSERT_TRUE(found.has_value());
    ASSERT_EQ(found->size(), 2U);
    expect_along((*found)[0], tray.truths[0], first.bark_mm);
    expect_along((*found)[1], tray.truths[1], second.bark_mm);
}

TEST(CoreFinder, LeavesARulerOut) {
    demo::Scene scene = coarse_scene(6);
    scene.mount.ruler = true;
    const demo::Rendering core = rendered(scene);
    const auto found = outline_cores(image_of(core.picture), px_per_mm);
    ASSERT_EQ(found.size(), 1U);
    expect_along(found[0], core.truth, scene.bark_mm);
}

TEST(CoreFinder, LeavesHandwritingOnTheMountOut) {
    for (const char* label : {"HW05A", "M12", "WWWW"}) {
        demo::Scene scene = coarse_scene(5);
        scene.mount.width_mm = 12.0;
        scene.mount.label = label;
        const demo::Rendering core = rendered(scene);
        EXPECT_EQ(outline_cores(image_of(core.picture), px_per_mm).size(), 1U) << label;
    }
}

TEST(CoreFinder, FindsNothingOnMountsAlone) {
    using Kind = demo::Mount::Kind;
    for (const Kind kind : {Kind::LightStick, Kind::DarkStick, Kind::Card}) {
        demo::Scene scene = coarse_scene(7);
        scene.mount.kind = kind;
        scene.mount.width_mm = 16.0;
        const demo::Rendering core = rendered(scene);
        // The mount above the core, with as much of the lid as there is.
        const int above = static_cast<int>(core.truth.path.front().y - (0.5 * scene.core_width_mm + 1.5) * px_per_mm);
        ASSERT_GT(above, 40);
        const cv::Mat mount = image_of(core.picture).rowRange(0, above).clone();
        EXPECT_TRUE(outline_cores(mount, px_per_mm).empty()) << static_cast<int>(kind);
    }
}

TEST(CoreFinder, FindsNothingOnBlankAndNoisyPictures) {
    EXPECT_TRUE(outline_cores(cv::Mat(300, 1500, CV_8UC3, cv::Scalar::all(210)), px_per_mm).empty());
    cv::Mat noise(300, 1500, CV_8UC3);
    cv::theRNG().state = 99;
    for (const double spread : {1.0, 4.0}) {
        cv::randn(noise, cv::Scalar::all(150), cv::Scalar::all(spread));
        EXPECT_TRUE(outline_cores(noise, px_per_mm).empty()) << spread;
    }
}

} // namespace
} // namespace pithward::test
