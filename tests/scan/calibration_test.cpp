#include "libcore/specimen/scan.h"
#include "libimaging/scan/scan_file.h"
#include "tests/support/raw_image.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

#include <functional>

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

/// The header of an image whose bytes were changed before it is opened.
Scan changed(const Written& how, const std::function<void(std::string&)>& change) {
    const TemporaryFolder folder;
    write_raw(folder.file("scan"), patterned(64, 48, CV_8UC3), how);
    std::string bytes = bytes_of(folder.file("scan"));
    change(bytes);
    return ScanFile::open(folder.write("changed", bytes)).value().header();
}

TEST(ResolutionTag, WithoutAUnitIsNone) {
    // 47 is what 1200 dpi would be in pixels to the millimetre: without a unit it still says nothing.
    for (const double dpi : {47.0, 300.0, 1200.0}) {
        const Scan tiff = changed({.dpi_x = dpi, .dpi_y = dpi}, [](std::string& bytes) {
            const std::string unit("\x28\x01\x03\0\x01\0\0\0\x02\0", 10); // ResolutionUnit 2: the inch
            ASSERT_NE(bytes.find(unit), std::string::npos);
            bytes[bytes.find(unit) + 8] = '\x01';
        });
        const Scan jpeg = changed({.kind = Kind::Jpeg, .dpi_x = dpi, .dpi_y = dpi}, [dpi](std::string& bytes) {
            // In place of the tag it has, JFIF's own with numbers and unit 0, "no unit".
            ASSERT_EQ(bytes.substr(6, 4), "Exif");
            const auto length = static_cast<std::size_t>(static_cast<unsigned char>(bytes[4]) * 256 +
                                                         static_cast<unsigned char>(bytes[5]));
            const std::string density{static_cast<char>(static_cast<int>(dpi) / 256),
                                      static_cast<char>(static_cast<int>(dpi) % 256)};
            std::string jfif("\xff\xe0\0\x10JFIF\0\1\1\0", 12);
            jfif.append(density).append(density).append(2, '\0');
            bytes.replace(2, length + 2, jfif);
        });
        const Scan png = changed({.kind = Kind::Png, .dpi_x = dpi, .dpi_y = dpi}, [](std::string& bytes) {
            const auto at = bytes.find("pHYs");
            ASSERT_NE(at, std::string::npos);
            bytes.erase(at - 4, 21);
        });
        for (const Scan& header : {tiff, jpeg, png}) {
            EXPECT_FALSE(header.tag_dpi_x.has_value()) << *header.tag_dpi_x;
            const auto calibration = believed_calibration(header, std::nullopt);
            ASSERT_FALSE(calibration.has_value());
            EXPECT_EQ(calibration.error().what, "the file does not say its resolution");
            EXPECT_NE(calibration.error().remedy.find("--dpi"), std::string::npos);
        }
    }
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
