#include "libimaging/strip/lanes.h"
#include "libimaging/strip/straighten.h"
#include "tests/support/raw_image.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <opencv2/imgproc.hpp>

#include <cmath>

namespace pithward::test {
namespace {

/// The value between four pixels, by hand.
double bilinear(const cv::Mat& pixels, ImagePoint at, int channel) {
    const int x = static_cast<int>(std::floor(at.x));
    const int y = static_cast<int>(std::floor(at.y));
    const double fx = at.x - x;
    const double fy = at.y - y;
    const auto value = [&](int column, int row) {
        return pixels.depth() == CV_16U ? static_cast<double>(pixels.at<cv::Vec3w>(row, column)[channel])
                                        : static_cast<double>(pixels.at<cv::Vec3b>(row, column)[channel]);
    };
    return (1.0 - fy) * ((1.0 - fx) * value(x, y) + fx * value(x + 1, y)) +
           fy * ((1.0 - fx) * value(x, y + 1) + fx * value(x + 1, y + 1));
}

const Calibration scale{.px_per_mm_x = 47.0, .px_per_mm_y = 47.0};
const std::vector<ImagePoint> path{{60.0, 100.0}, {500.0, 130.0}, {1100.0, 118.0}};

TEST(Straighten, InBlocksEqualsSamplingPlaceByPlace) {
    const TemporaryFolder folder;
    for (const int type : {CV_8UC3, CV_16UC3}) {
        cv::Mat pixels;
        cv::GaussianBlur(patterned(1200, 240, type), pixels, {}, 1.5);
        write_raw(folder.file("scan.tif"), pixels);
        const ScanFile scan = ScanFile::open(folder.file("scan.tif")).value();
        const StripGeometry geometry(path, scale);
        const StripGrid grid{.start_mm = 0.1, .px_mm = 1.0 / 47.0, .columns = 1000, .rows = 61};
        for (int from = 0; from < grid.columns; from += 170) {
            const int to = std::min(grid.columns, from + 170);
            const auto block = straighten(scan, geometry, grid, from, to);
            ASSERT_TRUE(block.has_value()) << block.error().line();
            ASSERT_EQ(block->size(), cv::Size(to - from, 61));
            for (int column = from; column < to; column += 7) {
                for (int row = 0; row < grid.rows; row += 5) {
                    const ImagePoint at = geometry.image_point({grid.s(column), grid.u(row)});
                    const double value = type == CV_16UC3
                                             ? static_cast<double>(block->at<cv::Vec3w>(row, column - from)[1])
                                             : static_cast<double>(block->at<cv::Vec3b>(row, column - from)[1]);
                    // Places are kept to a 32nd of a pixel by the resampling.
                    ASSERT_NEAR(value, bilinear(pixels, at, 1), type == CV_16UC3 ? 450.0 : 1.8)
                        << "row " << row << ", column " << column;
                }
            }
        }
    }
}

TEST(Straighten, OutsideTheScanIsBlack) {
    const TemporaryFolder folder;
    write_raw(folder.file("scan.tif"), cv::Mat(100, 300, CV_8UC3, cv::Scalar::all(200)));
    const ScanFile scan = ScanFile::open(folder.file("scan.tif")).value();
    const StripGeometry geometry({{20.0, 20.0}, {280.0, 20.0}}, scale);
    const auto block =
        straighten(scan, geometry, {.start_mm = 0.0, .px_mm = 1.0 / 47.0, .columns = 100, .rows = 101}, 0, 100);
    ASSERT_TRUE(block.has_value());
    EXPECT_EQ(block->at<cv::Vec3b>(5, 50)[0], 0);
    EXPECT_EQ(block->at<cv::Vec3b>(60, 50)[0], 200);
    const StripGeometry away({{5000.0, 5000.0}, {6000.0, 5000.0}}, scale);
    const auto nothing = straighten(scan, away, {.columns = 50, .rows = 9}, 0, 50);
    ASSERT_TRUE(nothing.has_value());
    EXPECT_EQ(cv::countNonZero(nothing->reshape(1)), 0);
}

TEST(Lanes, AreMeansAcrossTheStrip) {
    const TemporaryFolder folder;
    // Brightness grows along x; across, it is that of the row.
    cv::Mat pixels(300, 800, CV_8UC3);
    for (int y = 0; y < pixels.rows; ++y) {
        for (int x = 0; x < pixels.cols; ++x) {
            pixels.at<cv::Vec3b>(y, x) = {cv::saturate_cast<std::uint8_t>(0.2 * x),
                                          cv::saturate_cast<std::uint8_t>(0.5 * y), 100};
        }
    }
    write_raw(folder.file("scan.tif"), pixels);
    const ScanFile scan = ScanFile::open(folder.file("scan.tif")).value();
    const StripGeometry geometry({{100.0, 150.0}, {700.0, 150.0}}, scale);
    const auto lanes = lanes_along(scan, geometry, 47.0, {.half_breadth_mm = 2.0, .beyond_mm = 0.5});
    ASSERT_TRUE(lanes.has_value());
    EXPECT_EQ(lanes->count() % 2, 1);
    EXPECT_NEAR(lanes->s(0), -0.5, 1e-9);
    EXPECT_GE(lanes->s(lanes->columns() - 1), geometry.length_mm() + 0.49);
    for (int lane = 0; lane < lanes->count(); lane += 4) {
        for (int column = 0; column < lanes->columns(); column += 50) {
            const ImagePoint at = geometry.image_point({lanes->s(column), lanes->u(lane)});
            EXPECT_NEAR(lanes->rgb[0](lane, column) * 255.0, 0.2 * at.x, 0.8);
            EXPECT_NEAR(lanes->rgb[1](lane, column) * 255.0, 0.5 * at.y, 0.8);
            EXPECT_NEAR(lanes->rgb[2](lane, column) * 255.0, 100.0, 0.01);
        }
    }
}

TEST(Lanes, AreTheMeansOfTheStraightenedRows) {
    const TemporaryFolder folder;
    for (const int type : {CV_8UC3, CV_16UC3}) {
        cv::Mat pixels;
        cv::GaussianBlur(patterned(1200, 240, type), pixels, {}, 1.5);
        write_raw(folder.file("scan.tif"), pixels);
        const ScanFile scan = ScanFile::open(folder.file("scan.tif")).value();
        const StripGeometry geometry(path, scale);
        // Broader than the scan: its outer lanes are black.
        const auto lanes = lanes_along(scan, geometry, 47.0, {.half_breadth_mm = 3.2, .beyond_mm = 2.0});
        ASSERT_TRUE(lanes.has_value());
        const int rows = static_cast<int>(std::lround(lanes->lane_mm / lanes->px_mm));
        const StripGrid grid{lanes->start_mm, lanes->px_mm, lanes->columns(), lanes->count() * rows};
        const auto strip = straighten(scan, geometry, grid, 0, grid.columns);
        ASSERT_TRUE(strip.has_value());
        for (int lane = 0; lane < lanes->count(); lane += 3) {
            for (int column = 0; column < lanes->columns(); column += 11) {
                const cv::Scalar mean = cv::mean((*strip)(cv::Rect(column, lane * rows, 1, rows)));
                for (int c = 0; c < 3; ++c) {
                    ASSERT_NEAR(lanes->rgb[static_cast<std::size_t>(c)](lane, column),
                                mean[c] / (type == CV_16UC3 ? 65535.0 : 255.0), 0.006)
                        << "lane " << lane << ", column " << column;
                }
            }
        }
    }
}

} // namespace
} // namespace pithward::test
