#include "libimaging/scan/scan_file.h"
#include "tests/support/raw_image.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <opencv2/imgproc.hpp>

#include <array>
#include <random>
#include <thread>

namespace pithward::test {
namespace {

using Kind = Written::Kind;

class Region : public testing::Test {
protected:
    ScanFile written(const cv::Mat& pixels, const Written& how) {
        write_raw(folder_.file("scan"), pixels, how);
        return ScanFile::open(folder_.file("scan")).value();
    }

private:
    TemporaryFolder folder_;
};

TEST_F(Region, EqualsTheSamePartOfTheWhole) {
    for (const Kind kind : {Kind::TiffStrips, Kind::TiffTiles, Kind::Png}) {
        const cv::Mat pixels = patterned(500, 200, CV_8UC3);
        const ScanFile scan = written(pixels, {.kind = kind, .packing = Written::Packing::Lzw});
        const unsigned seed = 31;
        std::mt19937 random(seed);
        for (int i = 0; i < 50; ++i) {
            const int x = static_cast<int>(random() % 480);
            const int y = static_cast<int>(random() % 180);
            const cv::Rect region(x, y, 1 + static_cast<int>(random() % (500U - unsigned(x))),
                                  1 + static_cast<int>(random() % (200U - unsigned(y))));
            const auto part = scan.read(region);
            ASSERT_TRUE(part.has_value()) << part.error().line();
            ASSERT_EQ(part->size(), region.size()) << "seed " << seed;
            ASSERT_EQ(cv::norm(*part, pixels(region), cv::NORM_INF), 0.0) << region;
        }
    }
}

/// The parts of a stream put together.
cv::Mat streamed(const ScanFile& scan, int reduction) {
    cv::Mat whole(scan.header().height / reduction, scan.header().width / reduction, CV_8UC3, cv::Scalar::all(0));
    int rows = 0;
    const auto done = scan.stream(reduction, [&](int first, const cv::Mat& part) {
        part.copyTo(whole.rowRange(first, first + part.rows));
        rows += part.rows;
    });
    EXPECT_TRUE(done.has_value()) << (done ? "" : done.error().line());
    EXPECT_EQ(rows, whole.rows) << "each row once";
    return whole;
}

TEST_F(Region, AStreamGivesTheOverviewOfEachKindOfFile) {
    for (const Kind kind : {Kind::TiffStrips, Kind::TiffTiles, Kind::Png, Kind::Jpeg}) {
        for (const auto packing : {Written::Packing::None, Written::Packing::Lzw}) {
            for (const std::int64_t memory : {std::int64_t{0}, std::int64_t{400'000'000}}) {
                const cv::Mat pixels = patterned(1003, 331, CV_8UC3);
                const std::string path = written(pixels, {.kind = kind, .packing = packing}).header().file;
                const ScanFile scan = ScanFile::open(path, memory).value();
                const cv::Mat whole = streamed(scan, 8);
                const auto overview = scan.overview(8);
                ASSERT_TRUE(overview.has_value());
                // A JPEG is decoded smaller, which is not to the last bit the average over squares.
                const double apart = kind == Kind::Jpeg ? 3.0 : 0.0;
                EXPECT_LE(cv::norm(whole, *overview, cv::NORM_INF), apart) << "kind " << static_cast<int>(kind);
                // What is read afterwards is right too.
                const auto part = scan.read({100, 40, 300, 200});
                ASSERT_TRUE(part.has_value());
                if (kind != Kind::Jpeg) {
                    EXPECT_EQ(cv::norm(*part, pixels(cv::Rect(100, 40, 300, 200)), cv::NORM_INF), 0.0);
                }
            }
        }
    }
}

TEST_F(Region, ThePartsOfAStreamComeInStretches) {
    const cv::Mat pixels = patterned(6'000, 1'800, CV_8UC3); // 32 MB
    const std::string path =
        written(pixels, {.kind = Kind::TiffStrips, .packing = Written::Packing::Lzw}).header().file;
    int parts = 0;
    const auto done = ScanFile::open(path, 0)->stream(16, [&](int, const cv::Mat&) { ++parts; });
    ASSERT_TRUE(done.has_value());
    EXPECT_GT(parts, 3) << "the picture fills while the file is read";
}

TEST_F(Region, IsClippedToTheScan) {
    const cv::Mat pixels = patterned(100, 50, CV_8UC3);
    const ScanFile scan = written(pixels, {});
    const auto corner = scan.read({80, 30, 500, 500});
    ASSERT_TRUE(corner.has_value());
    EXPECT_EQ(corner->size(), cv::Size(20, 20));
    const auto before = scan.read({-10, -5, 20, 20});
    ASSERT_TRUE(before.has_value());
    EXPECT_EQ(cv::norm(*before, pixels(cv::Rect(0, 0, 10, 15)), cv::NORM_INF), 0.0);
    const auto outside = scan.read({200, 0, 10, 10});
    ASSERT_FALSE(outside.has_value());
    EXPECT_EQ(outside.error().where, scan.header().file);
}

TEST_F(Region, ReductionIsAnAverageOverSquares) {
    for (const int type : {CV_8UC3, CV_16UC3}) {
        const cv::Mat pixels = patterned(103, 61, type);
        const ScanFile scan = written(pixels, {});
        for (const int step : {2, 3, 7}) {
            const auto reduced = scan.read({1, 2, 100, 55}, step);
            ASSERT_TRUE(reduced.has_value());
            ASSERT_EQ(reduced->size(), cv::Size(100 / step, 55 / step));
            for (const auto& [column, row] : {std::pair{0, 0}, {4, 3}, {100 / step - 1, 55 / step - 1}}) {
                const cv::Rect square(1 + column * step, 2 + row * step, step, step);
                const cv::Scalar mean = cv::mean(pixels(square));
                for (int c = 0; c < 3; ++c) {
                    const double value = type == CV_16UC3 ? reduced->at<cv::Vec3w>(row, column)[c]
                                                          : reduced->at<cv::Vec3b>(row, column)[c];
                    EXPECT_NEAR(value, mean[c], 1.0) << "step " << step;
                }
            }
        }
    }
}

TEST_F(Region, AnOverviewOfA16BitScanHas8Bits) {
    const cv::Mat pixels = patterned(160, 80, CV_16UC3);
    const ScanFile scan = written(pixels, {});
    double last = -1.0;
    const auto overview = scan.overview(4, Work{{}, [&](double done) { last = done; }});
    ASSERT_TRUE(overview.has_value());
    EXPECT_EQ(overview->type(), CV_8UC3);
    EXPECT_EQ(overview->size(), cv::Size(40, 20));
    const cv::Scalar mean = cv::mean(pixels(cv::Rect(20, 40, 4, 4)));
    EXPECT_NEAR(overview->at<cv::Vec3b>(10, 5)[1], mean[1] / 257.0, 1.0);
    EXPECT_DOUBLE_EQ(last, 1.0);
}

TEST_F(Region, AScanThatDoesNotFitTheMemoryGivesTheSamePixels) {
    const TemporaryFolder folder;
    const cv::Mat pixels = patterned(700, 301, CV_8UC3);
    for (const Kind kind : {Kind::TiffStrips, Kind::TiffTiles, Kind::Png, Kind::Jpeg}) {
        write_raw(folder.file("scan"), pixels, {.kind = kind});
        const ScanFile roomy = ScanFile::open(folder.file("scan")).value();
        const ScanFile tight = ScanFile::open(folder.file("scan"), 1000).value();
        for (const int reduction : {1, 3, 8}) {
            const auto overview = tight.overview(reduction);
            ASSERT_TRUE(overview.has_value()) << overview.error().line();
            EXPECT_EQ(cv::norm(*overview, *roomy.overview(reduction), cv::NORM_INF), 0.0);
        }
        const cv::Rect region(333, 20, 100, 250);
        EXPECT_EQ(cv::norm(*tight.read(region), *roomy.read(region), cv::NORM_INF), 0.0);
        const std::string bytes = bytes_of(folder.file("scan"));
        const auto cut = ScanFile::open(folder.write("cut", bytes.substr(0, bytes.size() * 9 / 10)), 1000);
        EXPECT_FALSE(cut && cut->overview(4)); // damage is seen on this way too
    }
}

TEST_F(Region, DamageIsToldInOneWayWhereverItIsMet) {
    const TemporaryFolder folder;
    write_raw(folder.file("scan"), patterned(300, 900, CV_8UC3), {.packing = Written::Packing::Lzw});
    const std::string bytes = bytes_of(folder.file("scan"));
    const std::string broken = bytes.substr(0, bytes.size() / 2) + std::string(bytes.size() / 4, '\x5a') +
                               bytes.substr(bytes.size() / 2 + bytes.size() / 4);
    const ScanFile scan = ScanFile::open(folder.write("broken", broken)).value();
    EXPECT_FALSE(scan.damage().has_value());
    const auto overview = scan.overview(8);
    ASSERT_FALSE(overview.has_value());
    ASSERT_TRUE(scan.damage().has_value());
    EXPECT_EQ(scan.damage()->line(), overview.error().line());
    EXPECT_EQ(scan.read({0, 500, 300, 100}).error().line(), overview.error().line());
}

TEST_F(Region, MayBeReadFromSeveralThreads) {
    const cv::Mat pixels = patterned(800, 300, CV_8UC3);
    const ScanFile scan = written(pixels, {.packing = Written::Packing::Lzw});
    std::array<double, 4> wrong{};
    std::vector<std::jthread> threads;
    for (std::size_t t = 0; t < wrong.size(); ++t) {
        threads.emplace_back([&, t, copy = scan] {
            for (int k = 0; k < 20; ++k) {
                const cv::Rect region(static_cast<int>(t) * 100 + 13 * k, 7 * k, 120, 90);
                const auto part = copy.read(region);
                const cv::Rect inside = region & cv::Rect(0, 0, 800, 300);
                wrong[t] += part ? cv::norm(*part, pixels(inside), cv::NORM_INF) : 1000.0;
            }
        });
    }
    threads.clear();
    EXPECT_EQ(wrong, (std::array<double, 4>{}));
}

} // namespace
} // namespace pithward::test
