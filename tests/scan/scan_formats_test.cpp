#include "libimaging/scan/scan_file.h"
#include "tests/support/raw_image.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <opencv2/imgproc.hpp>

namespace pithward::test {
namespace {

using Kind = Written::Kind;
using Packing = Written::Packing;

cv::Mat whole_of(const ScanFile& scan) {
    const auto pixels = scan.read({0, 0, scan.header().width, scan.header().height});
    EXPECT_TRUE(pixels.has_value()) << (pixels ? "" : pixels.error().line());
    return pixels.value_or(cv::Mat());
}

bool same(const cv::Mat& a, const cv::Mat& b) {
    return a.size() == b.size() && a.type() == b.type() && cv::norm(a, b, cv::NORM_INF) == 0.0;
}

ScanFile written_and_opened(const TemporaryFolder& folder, const cv::Mat& pixels, const Written& how,
                            const char* name) {
    write_raw(folder.file(name), pixels, how);
    auto scan = ScanFile::open(folder.file(name));
    EXPECT_TRUE(scan.has_value()) << (scan ? "" : scan.error().line());
    return scan.value();
}

struct ReadCase {
    const char* name;
    int type;
    Written how;
};

class Lossless : public testing::TestWithParam<ReadCase> {};

TEST_P(Lossless, GivesTheSamePixelsBack) {
    const TemporaryFolder folder;
    const ReadCase& c = GetParam();
    const cv::Mat pixels = patterned(333, 151, c.type);
    const ScanFile scan = written_and_opened(folder, pixels, c.how, c.how.kind == Kind::Png ? "a.png" : "a.tif");
    EXPECT_EQ(scan.header().width, 333);
    EXPECT_EQ(scan.header().height, 151);
    EXPECT_EQ(scan.header().bits, CV_MAT_DEPTH(c.type) == CV_16U ? 16 : 8);
    EXPECT_EQ(scan.header().bands, CV_MAT_CN(c.type));
    EXPECT_TRUE(same(whole_of(scan), pixels));
}

INSTANTIATE_TEST_SUITE_P(
    Formats, Lossless,
    testing::Values(ReadCase{"StripsPlain", CV_8UC3, {.kind = Kind::TiffStrips}},
                    ReadCase{"StripsLzw", CV_8UC3, {.kind = Kind::TiffStrips, .packing = Packing::Lzw}},
                    ReadCase{"StripsDeflate", CV_8UC3, {.kind = Kind::TiffStrips, .packing = Packing::Deflate}},
                    ReadCase{"TilesPlain", CV_8UC3, {.kind = Kind::TiffTiles}},
                    ReadCase{"TilesLzw", CV_8UC3, {.kind = Kind::TiffTiles, .packing = Packing::Lzw}},
                    ReadCase{"TilesDeflate", CV_8UC3, {.kind = Kind::TiffTiles, .packing = Packing::Deflate}},
                    ReadCase{"DeepStripsLzw", CV_16UC3, {.kind = Kind::TiffStrips, .packing = Packing::Lzw}},
                    ReadCase{"DeepTilesDeflate", CV_16UC3, {.kind = Kind::TiffTiles, .packing = Packing::Deflate}},
                    ReadCase{"Png", CV_8UC3, {.kind = Kind::Png}}, ReadCase{"DeepPng", CV_16UC3, {.kind = Kind::Png}}),
    [](const auto& tested) { return tested.param.name; });

TEST(ScanFormats, JpegGivesNearlyTheSamePixels) {
    const TemporaryFolder folder;
    cv::Mat pixels;
    cv::GaussianBlur(patterned(320, 160, CV_8UC3), pixels, {}, 2.0);
    const ScanFile scan = written_and_opened(folder, pixels, {.kind = Kind::Jpeg}, "a.jpg");
    EXPECT_LE(cv::norm(whole_of(scan), pixels, cv::NORM_INF), 6.0);
}

TEST(ScanFormats, GreyBecomesRgb) {
    const TemporaryFolder folder;
    for (const int type : {CV_8UC1, CV_16UC1}) {
        for (const Kind kind : {Kind::TiffStrips, Kind::Png}) {
            const cv::Mat grey = patterned(100, 80, type);
            const ScanFile scan = written_and_opened(folder, grey, {.kind = kind}, "grey.image");
            cv::Mat rgb;
            cv::merge(std::vector<cv::Mat>(3, grey), rgb);
            EXPECT_EQ(scan.header().bands, 1);
            EXPECT_TRUE(same(whole_of(scan), rgb));
        }
    }
}

TEST(ScanFormats, AnAlphaChannelIsDropped) {
    const TemporaryFolder folder;
    for (const Kind kind : {Kind::TiffStrips, Kind::Png}) {
        const cv::Mat colour = patterned(100, 80, CV_8UC4);
        cv::Mat rgb;
        cv::cvtColor(colour, rgb, cv::COLOR_BGRA2BGR); // drops the fourth channel, keeps the order
        EXPECT_TRUE(same(whole_of(written_and_opened(folder, colour, {.kind = kind}, "rgba.image")), rgb));
        const cv::Mat grey = patterned(100, 80, CV_8UC2);
        std::vector<cv::Mat> channels;
        cv::split(grey, channels);
        cv::merge(std::vector<cv::Mat>(3, channels[0]), rgb);
        EXPECT_TRUE(same(whole_of(written_and_opened(folder, grey, {.kind = kind}, "grey alpha.image")), rgb));
    }
}

TEST(ScanFormats, AnOrientationTagIsReportedAndNotApplied) {
    const TemporaryFolder folder;
    const cv::Mat pixels = patterned(120, 60, CV_8UC3);
    const ScanFile scan = written_and_opened(folder, pixels, {.orientation = 6}, "turned.tif");
    EXPECT_EQ(scan.header().orientation, 6);
    EXPECT_TRUE(same(whole_of(scan), pixels));
}

TEST(ScanFormats, TheFormatIsThatOfTheBytesNotOfTheName) {
    const TemporaryFolder folder;
    const cv::Mat pixels = patterned(64, 64, CV_8UC3);
    EXPECT_TRUE(same(whole_of(written_and_opened(folder, pixels, {.kind = Kind::Png}, "named.tif")), pixels));
}

} // namespace
} // namespace pithward::test
