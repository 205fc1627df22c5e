#include "libcore/specimen/path_check.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace pithward {
namespace {

using Points = std::vector<ImagePoint>;

/// What is wrong with a path on a scan of 10,000 x 2,000 pixels, 40 to the millimetre; empty when nothing is.
std::string wrong_with(const Points& points, double px_per_mm = 40.0) {
    Scan scan;
    scan.file = "tray.tif";
    scan.width = 10'000;
    scan.height = 2'000;
    const auto fault = fault_of_path(points, scan, {px_per_mm, px_per_mm, 0.0, Calibration::Source::Given});
    EXPECT_TRUE(!fault || (fault->where == "tray.tif" && !fault->remedy.empty()));
    return fault ? fault->what : "";
}

TEST(PathCheck, PathsThatPeopleDraw) {
    EXPECT_EQ(wrong_with({{10, 1000}, {9000, 1000}}), "");
    EXPECT_EQ(wrong_with({{9000, 100}, {9000, 1900}}), "");
    // Aside along a ring, slanting a little back, and on; and round a crack.
    EXPECT_EQ(wrong_with({{10, 1000}, {4000, 1000}, {3950, 1200}, {9000, 1200}}), "");
    EXPECT_EQ(wrong_with({{10, 1000}, {4000, 1000}, {4020, 900}, {4100, 900}, {4120, 1000}, {9000, 1000}}), "");
    // A hand that trembles, and a point clicked twice.
    EXPECT_EQ(wrong_with({{10, 1000}, {500, 1001}, {499, 1001}, {499, 1001}, {900, 1000}}), "");
    // A bow that turns right round, with wood between the two ways.
    Points bow;
    for (int k = 0; k <= 30; ++k) {
        const double angle = std::numbers::pi * k / 30.0;
        bow.push_back({1000.0 - 400.0 * std::cos(angle), 1000.0 - 400.0 * std::sin(angle)});
    }
    EXPECT_EQ(wrong_with(bow), "");
}

TEST(PathCheck, PointsWithinOnePixelAreOne) {
    EXPECT_NE(wrong_with({{100, 100}}).find("one point"), std::string::npos);
    EXPECT_NE(wrong_with({{100, 100}, {100, 100}}).find("one point"), std::string::npos);
    EXPECT_NE(wrong_with({{100, 100}, {100.4, 100.3}, {99.5, 100}}).find("one point"), std::string::npos);
    EXPECT_EQ(wrong_with({{100, 100}, {101.1, 100}}), "");
}

TEST(PathCheck, LeavesTheScan) {
    for (const ImagePoint point : {ImagePoint{10'000, 5}, {-1, 5}, {5, 2000}, {5, NAN}, {HUGE_VAL, 5}}) {
        EXPECT_NE(wrong_with({{100, 100}, point}).find("leaves the scan"), std::string::npos);
    }
}

TEST(PathCheck, IsBoundedInLengthAndPoints) {
    EXPECT_NE(wrong_with({{0, 100}, {9000, 100}}, 2.9).find("3 m"), std::string::npos);
    EXPECT_EQ(wrong_with({{0, 100}, {9000, 100}}, 3.1), "");
    Points many;
    for (int k = 0; k <= 10'000; ++k) {
        many.push_back({0.9 * k, 100.0});
    }
    EXPECT_NE(wrong_with(many).find("10,000 points"), std::string::npos);
    many.pop_back();
    EXPECT_EQ(wrong_with(many), "");
}

TEST(PathCheck, RunsBackOverItself) {
    const std::vector<Points> back{
        {{100, 1000}, {5000, 1000}, {100, 1000}},
        {{100, 1000}, {5000, 1000}, {5000, 1015}, {100, 1015}}, // a third of a millimetre beside it
        {{100, 1000}, {5000, 1000}, {5000, 1500}, {7000, 1500}, {7000, 1000}, {3000, 1000}},
        {{5000, 100}, {5000, 1900}, {5001, 1000}},
    };
    for (const Points& points : back) {
        EXPECT_NE(wrong_with(points).find("back over itself near"), std::string::npos);
    }
    // With a millimetre of wood between, it is other wood.
    EXPECT_EQ(wrong_with({{100, 1000}, {5000, 1000}, {5000, 1040}, {100, 1040}}), "");
}

} // namespace
} // namespace pithward
