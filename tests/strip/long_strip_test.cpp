// A core of 600 mm at 2400 dpi has 56,693 columns, more than OpenCV's remap can address at a time.
#include "libimaging/strip/lanes.h"
#include "libimaging/strip/straighten.h"
#include "tests/support/raw_image.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::test {
namespace {

constexpr int columns = 56'693;
constexpr int strip_rows = 120;
constexpr double fine_px_per_mm = 2400.0 / 25.4;
const Calibration fine{.px_per_mm_x = fine_px_per_mm, .px_per_mm_y = fine_px_per_mm};

/// What the scan shows at x: red grows by 1 each 256 columns, green runs up and down within 256.
int red_at(double x) {
    return static_cast<int>(x) / 256;
}
double green_at(double x) {
    const double phase = std::fmod(x, 256.0);
    return 2.0 * (phase < 128.0 ? phase : 256.0 - phase) * 0.9;
}

class LongStrip : public testing::Test {
protected:
    void SetUp() override {
        cv::Mat pixels(strip_rows, columns, CV_8UC3);
        for (int x = 0; x < columns; ++x) {
            const cv::Vec3b colour(static_cast<std::uint8_t>(red_at(x)), cv::saturate_cast<std::uint8_t>(green_at(x)),
                                   128);
            pixels.col(x).setTo(cv::Scalar(colour[0], colour[1], colour[2]));
        }
        write_raw(
            folder_.file("long.tif"), pixels,
            {.kind = Written::Kind::TiffStrips, .packing = Written::Packing::Lzw, .dpi_x = 2400.0, .dpi_y = 2400.0});
    }
    ScanFile scan() { return ScanFile::open(folder_.file("long.tif")).value(); }
    const StripGeometry geometry{{{0.0, 60.0}, {columns - 1.0, 60.0}}, fine};

private:
    TemporaryFolder folder_;
};

TEST_F(LongStrip, IsStraightenedRightBeyondColumn32767) {
    const ScanFile file = scan();
    const StripGrid grid{.start_mm = 0.0, .px_mm = 1.0 / fine_px_per_mm, .columns = columns, .rows = 9};
    for (int from = 0; from < columns; from += greatest_block) {
        const int to = std::min(columns, from + greatest_block);
        const auto block = straighten(file, geometry, grid, from, to);
        ASSERT_TRUE(block.has_value());
        ASSERT_EQ(block->cols, to - from);
        for (int column = from + 3; column < to; column += 61) {
            const cv::Vec3b seen = block->at<cv::Vec3b>(4, column - from);
            // A place near a step of red may fall on either side of it.
            ASSERT_NEAR(seen[0], red_at(column), column % 256 < 2 || column % 256 > 253 ? 1.0 : 0.0) << column;
            ASSERT_NEAR(seen[1], green_at(column), 2.0) << column;
        }
    }
}

TEST_F(LongStrip, ABlockIsNeverLongerThanPromised) {
    const StripGrid grid{.start_mm = 0.0, .px_mm = 1.0 / fine_px_per_mm, .columns = columns, .rows = 3};
    const auto block = straighten(scan(), geometry, grid, 0, columns);
    ASSERT_TRUE(block.has_value());
    EXPECT_EQ(block->cols, greatest_block);
}

TEST_F(LongStrip, ItsLanesAreRightToTheEnd) {
    const auto lanes = lanes_along(scan(), geometry, fine_px_per_mm, {.half_breadth_mm = 0.4, .beyond_mm = 0.0});
    ASSERT_TRUE(lanes.has_value());
    ASSERT_GE(lanes->columns(), columns);
    for (int column = 1; column < columns - 2; column += 97) {
        ASSERT_NEAR(lanes->rgb[0](lanes->centre(), column) * 255.0F, red_at(column), 1.01) << column;
        ASSERT_NEAR(lanes->rgb[1](lanes->centre(), column) * 255.0F, green_at(column), 2.0) << column;
    }
}

} // namespace
} // namespace pithward::test
