#include "libimaging/boundary/find_cores.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::test {
namespace {

double distance(ImagePoint a, ImagePoint b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

TEST(FindCoresTrial, PathsBeginAtTheBarkAndSayHowSureThatIs) {
    const TemporaryFolder folder;
    for (int number = 1; number <= 4; ++number) {
        demo::Scene scene = clear_scene(620, number, 40);
        scene.bark_left = number % 2 == 0;
        const RenderedScan core = rendered_scan(folder, scene);
        const auto found = find_cores(core.scan, core.calibration);
        ASSERT_TRUE(found.has_value()) << found.error().line();
        ASSERT_EQ(found->size(), 1U) << "core " << number;
        const FoundCore& one = found->front();
        EXPECT_LT(distance(one.path.front(), core.truth().path.front()),
                  distance(one.path.back(), core.truth().path.front()))
            << "core " << number;
        EXPECT_GT(one.bark_end.probability, 0.95) << "core " << number;
        EXPECT_FALSE(one.bark_end.how.empty());
        EXPECT_NEAR(one.width_mm, scene.core_width_mm, 1.2);
    }
}

TEST(FindCores, OfABlankScanAreNone) {
    const TemporaryFolder folder;
    const ScanFile scan = opened(folder, plain_picture(2000, 400, 210, 1200.0));
    const auto calibration = believed_calibration(scan.header(), std::nullopt);
    const auto found = find_cores(scan, *calibration);
    ASSERT_TRUE(found.has_value());
    EXPECT_TRUE(found->empty());
}

TEST(FindCores, StopsWhenAsked) {
    const TemporaryFolder folder;
    const RenderedScan core = rendered_scan(folder, clear_scene(620, 1, 20));
    std::stop_source source;
    source.request_stop();
    EXPECT_FALSE(find_cores(core.scan, core.calibration, Work{source.get_token(), {}}).has_value());
}

} // namespace
} // namespace pithward::test
