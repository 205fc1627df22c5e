#include "app/picture/measured_core.h"
#include "app/report/overlay.h"
#include "tests/app/fake_scan.h"

#include <gtest/gtest.h>

namespace pithward::report {
namespace {

QImage plain(int width, int height) {
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(QColor(200, 150, 90));
    return image;
}

picture::MeasuredCore a_core() {
    return *picture::measured(bench::fake_reading(bench::fake_request("a.png")));
}

TEST(Overlay, IsAsLargeAsAskedAndNeverEnlarged) {
    const ScanImage scan{plain(1000, 100), {2000, 200}, "a.png"};
    EXPECT_EQ(render_overlay(scan, {}, {}, 500).size(), QSize(500, 50));
    EXPECT_EQ(render_overlay(scan, {}, {}, 9000).size(), QSize(2000, 200));
}

TEST(Overlay, MarksBoundariesAndLeavesTheWoodAtThePathBare) {
    const auto core = a_core();
    const QImage picture = render_overlay({plain(2000, 200), {2000, 200}, "a.png"}, std::span(&core.reading, 1),
                                          std::span(&core.series, 1), 4000);
    const QRgb wood = plain(1, 1).pixel(0, 0);
    const ImagePoint at = core.reading.boundaries[20].at;
    const auto x = static_cast<int>(at.x);
    EXPECT_EQ(picture.pixel(x, 100), wood);
    EXPECT_NE(picture.pixel(x, 50), wood);
    EXPECT_NE(picture.pixel(x, 150), wood);
    EXPECT_EQ(picture.pixel(x + bench::fake_step / 2, 70), wood);
}

TEST(Overlay, APictureBecomesAPng) {
    const auto bytes = png_bytes(plain(20, 10));
    ASSERT_TRUE(bytes);
    EXPECT_EQ(bytes->substr(1, 3), "PNG");
    EXPECT_FALSE(png_bytes(QImage()));
}

} // namespace
} // namespace pithward::report
