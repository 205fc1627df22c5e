#include "libimaging/strip/strip_picture.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

TEST(StripPicture, IsAsLongAsThePathAndAsBrightAsTheScan) {
    const TemporaryFolder folder;
    const ScanFile scan = opened(folder, plain_picture(1000, 200, 102, 1200.0));
    StripRequest request;
    request.calibration = *Calibration::from_dpi(1200, 1200, Calibration::Source::FileTag);
    request.path = {{100, 100}, {900, 100}};
    request.half_breadth_mm = 1.0;
    const auto strip = strip_picture(scan, request);
    ASSERT_TRUE(strip.has_value()) << strip.error().line();
    EXPECT_NEAR(strip->rgb.cols, 800, 1);
    EXPECT_EQ(strip->light.size(), static_cast<std::size_t>(strip->rgb.cols));
    for (const float light : strip->light) {
        EXPECT_NEAR(light, 102.0 / 255.0, 0.005);
    }
    request.most_columns = 200;
    const auto coarse = strip_picture(scan, request);
    ASSERT_TRUE(coarse.has_value());
    EXPECT_NEAR(coarse->rgb.cols, 200, 1);
}

TEST(StripPicture, RefusesWhatCanNotBeShown) {
    const TemporaryFolder folder;
    const ScanFile scan = opened(folder, plain_picture(1000, 200, 102, 1200.0));
    StripRequest request;
    request.calibration = *Calibration::from_dpi(1200, 1200, Calibration::Source::FileTag);
    request.path = {{100, 100}};
    EXPECT_FALSE(strip_picture(scan, request).has_value());
    request.path = {{100, 100}, {900, 100}};
    request.half_breadth_mm = -1.0;
    EXPECT_FALSE(strip_picture(scan, request).has_value());
}

} // namespace
} // namespace pithward::test
