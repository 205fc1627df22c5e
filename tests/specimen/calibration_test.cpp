#include "libcore/specimen/calibration.h"
#include "libcore/specimen/scan.h"

#include <gtest/gtest.h>

namespace pithward {
namespace {

Scan tagged(std::optional<double> dpi_x, std::optional<double> dpi_y) {
    Scan scan;
    scan.file = "core.tif";
    scan.tag_dpi_x = dpi_x;
    scan.tag_dpi_y = dpi_y;
    return scan;
}

TEST(Calibration, TheDirectionsMayDiffer) {
    const auto scale = Calibration::from_dpi(1200, 2400, Calibration::Source::FileTag).value();
    EXPECT_DOUBLE_EQ(scale.dpi_x(), 1200);
    EXPECT_DOUBLE_EQ(scale.dpi_y(), 2400);
    // One inch each way.
    EXPECT_DOUBLE_EQ(scale.distance({0, 0}, {1200, 0}).value(), 25.4);
    EXPECT_DOUBLE_EQ(scale.distance({0, 0}, {0, 2400}).value(), 25.4);
}

TEST(Calibration, AResolutionOutOfReasonIsRefused) {
    for (const double dpi : {0.0, -1200.0, 99.0, 1e6, std::nan("")}) {
        const auto scale = Calibration::from_dpi(1200, dpi, Calibration::Source::Given);
        ASSERT_FALSE(scale.has_value()) << dpi;
        EXPECT_NE(scale.error().remedy.find("--dpi"), std::string::npos);
    }
}

TEST(BelievedCalibration, TheTagHoldsUnlessTheUserSaysOtherwise) {
    const auto tag = believed_calibration(tagged(1200, 600), std::nullopt).value();
    EXPECT_EQ(tag.source, Calibration::Source::FileTag);
    EXPECT_DOUBLE_EQ(tag.dpi_y(), 600);
    const auto given = believed_calibration(tagged(72, 72), 2400).value();
    EXPECT_EQ(given.source, Calibration::Source::Given);
    EXPECT_DOUBLE_EQ(given.dpi_x(), 2400);
}

TEST(BelievedCalibration, TagsOf72And96AndNoneAreNotBelieved) {
    for (const auto& scan : {tagged(72, 72), tagged(96, 96), tagged({}, {}), tagged(1200, {})}) {
        const auto scale = believed_calibration(scan, std::nullopt);
        ASSERT_FALSE(scale.has_value());
        EXPECT_EQ(scale.error().where, "core.tif");
        EXPECT_NE(scale.error().remedy.find("--dpi"), std::string::npos);
    }
}

} // namespace
} // namespace pithward
