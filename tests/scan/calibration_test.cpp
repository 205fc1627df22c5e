#include "libcore/specimen/scan.h"
#include "libimaging/scan/scan_file.h"
#include "tests/support/raw_image.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

using Kind = Written::Kind;

/// The header of a small image with this tag.
Scan header_with(const Written& how) {
    const TemporaryFolder folder;
    write_raw(folder.file("scan"), patterned(64, 48, CV_8UC3), how);
    return ScanFile::open(folder.file("scan")).value().header();
}

TEST(ResolutionTag, IsReadFromEveryFormat) {
    for (const Kind kind : {Kind::TiffStrips, Kind::TiffTiles, Kind::Png, Kind::Jpeg}) {
        for (const double dpi : {600.0, 1200.0, 2400.0, 4800.0}) {
            const Scan header = header_with({.kind = kind, .dpi_x = dpi, .dpi_y = dpi});
            ASSERT_TRUE(header.tag_dpi_x.has_value());
            // A PNG has whole pixels to the metre: half of one is 0.013 dpi.
            EXPECT_NEAR(*header.tag_dpi_x, dpi, 0.013);
            EXPECT_NEAR(*header.tag_dpi_y, dpi, 0.013);
        }
    }
}

TEST(ResolutionTag, MayDifferInXAndY) {
    for (const Kind kind : {Kind::TiffStrips, Kind::Png, Kind::Jpeg}) {
        const Scan header = header_with({.kind = kind, .dpi_x = 2400.0, .dpi_y = 1200.0});
        const auto calibration = believed_calibration(header, std::nullopt);
        ASSERT_TRUE(calibration.has_value()) << calibration.error().line();
        EXPECT_NEAR(calibration->px_per_mm_x, 2400.0 / 25.4, 0.001);
        EXPECT_NEAR(calibration->px_per_mm_y, 1200.0 / 25.4, 0.001);
        EXPECT_EQ(calibration->source, Calibration::Source::FileTag);
    }
}

TEST(BelievedCalibration, RefusesTagsThatProgramsWriteWithoutKnowing) {
    for (const Kind kind : {Kind::TiffStrips, Kind::Png, Kind::Jpeg}) {
        for (const double dpi : {72.0, 96.0}) {
            const Scan header = header_with({.kind = kind, .dpi_x = dpi, .dpi_y = dpi});
            const auto calibration = believed_calibration(header, std::nullopt);
            ASSERT_FALSE(calibration.has_value());
            EXPECT_EQ(calibration.error().where, header.file);
            EXPECT_NE(calibration.error().remedy.find("--dpi"), std::string::npos);
            EXPECT_NE(calibration.error().what.find(std::to_string(std::lround(dpi))), std::string::npos);
        }
    }
}

TEST(BelievedCalibration, RefusesAMissingTag) {
    const Scan header = header_with({.kind = Kind::Png, .dpi_x = 0.0, .dpi_y = 0.0});
    const auto calibration = believed_calibration(header, std::nullopt);
    ASSERT_FALSE(calibration.has_value());
    EXPECT_NE(calibration.error().line().find("--dpi"), std::string::npos) << calibration.error().line();
}

TEST(BelievedCalibration, TheUsersWordOverridesTheTag) {
    for (const double tag : {0.0, 72.0, 1200.0}) {
        const Scan header = header_with({.kind = Kind::Png, .dpi_x = tag, .dpi_y = tag});
        const auto calibration = believed_calibration(header, 2400.0);
        ASSERT_TRUE(calibration.has_value());
        EXPECT_DOUBLE_EQ(calibration->dpi_x(), 2400.0);
        EXPECT_DOUBLE_EQ(calibration->dpi_y(), 2400.0);
        EXPECT_EQ(calibration->source, Calibration::Source::Given);
    }
}

TEST(BelievedCalibration, RefusesAnImpossibleResolution) {
    const Scan header = header_with({});
    for (const double dpi : {0.0, -1200.0, 12.0, 1e9, std::numeric_limits<double>::quiet_NaN()}) {
        const auto calibration = believed_calibration(header, dpi);
        ASSERT_FALSE(calibration.has_value()) << dpi;
        EXPECT_EQ(calibration.error().where, header.file);
    }
}

} // namespace
} // namespace pithward::test
