#include "libimaging/calibrate/ruler_scale.h"
#include "tests/support/random_ruler.h"
#include "tests/support/raw_image.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>
#include <opencv2/imgproc.hpp>

#include <limits>
#include <random>

namespace pithward::test {
namespace {

/// Refused with a fault that names the file and a remedy, in one line.
void expect_refused(const ScanFile& scan, const RulerLine& line, const std::string& what) {
    const auto scale = scale_along(scan, line, Graduation::Millimetre, std::nullopt);
    ASSERT_FALSE(scale.has_value()) << "taken for a ruler of " << scale->px_per_mm << " px/mm";
    EXPECT_NE(scale.error().what.find(what), std::string::npos) << scale.error().line();
    EXPECT_EQ(scale.error().where, scan.header().file);
    EXPECT_FALSE(scale.error().remedy.empty());
    EXPECT_EQ(scale.error().line().find('\n'), std::string::npos);
}

ScanFile scan_of(const TemporaryFolder& folder, const cv::Mat& pixels, const Written& how = {}) {
    static int count = 0;
    const std::string file = folder.file("picture " + std::to_string(++count));
    write_raw(file, pixels, how);
    return ScanFile::open(file).value();
}

TEST(NotARuler, LinesThatCannotBeMeasured) {
    const TemporaryFolder folder;
    const ScanFile scan = scan_of(folder, patterned(600, 200, CV_8UC3));
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinite = std::numeric_limits<double>::infinity();
    for (const RulerLine& line : {RulerLine{{-5.0, 10.0}, {500.0, 10.0}}, RulerLine{{0.0, 10.0}, {600.0, 10.0}},
                                  RulerLine{{nan, 0.0}, {9.0, 9.0}}, RulerLine{{0.0, 0.0}, {500.0, infinite}},
                                  RulerLine{{0.0, -1e300}, {500.0, 1e300}}}) {
        expect_refused(scan, line, "leaves the scan");
    }
    expect_refused(scan, {{50.0, 50.0}, {50.0, 50.0}}, "shorter than");
    expect_refused(scan, {{50.0, 50.0}, {80.0, 50.0}}, "shorter than");
}

TEST(NotARuler, TwoPointsOfAnAbsurdDistance) {
    Scan scan;
    scan.width = scan.height = 1000;
    for (const double apart : {0.0, -5.0, 1e9, std::numeric_limits<double>::quiet_NaN()}) {
        EXPECT_FALSE(scale_between(scan, {{0.0, 0.0}, {900.0, 0.0}}, Millimetres(apart), std::nullopt)) << apart;
    }
}

TEST(NotARuler, RingsAreNoGraduations) {
    const TemporaryFolder folder;
    for (int number = 1; number <= 2; ++number) {
        demo::Scene scene = clear_scene(811, number, 40);
        scene.growth.sensitivity = 0.08; // rings nearly alike
        scene.widths_mm.clear();
        scene.growth.rings = 40;
        const RenderedScan rendered = rendered_scan(folder, scene);
        const auto& path = rendered.truth().path;
        expect_refused(rendered.scan, {path.front(), path.back()}, "ruler");
        for (std::size_t k = 4; k < path.size(); k += 4) {
            expect_refused(rendered.scan, {path[k - 4], path[k]}, "ruler");
        }
    }
}

TEST(NotARuler, OneGreyAndWhatAJpegMakesOfIt) {
    const TemporaryFolder folder;
    cv::Mat ramp(200, 900, CV_8UC3);
    for (int x = 0; x < ramp.cols; ++x) {
        ramp.col(x).setTo(cv::Scalar::all(80 + 0.1 * x));
    }
    for (const cv::Mat& pixels : {cv::Mat(200, 900, CV_8UC3, cv::Scalar::all(140)), ramp}) {
        const ScanFile scan = scan_of(folder, pixels, {.kind = Written::Kind::Jpeg, .quality = 30});
        expect_refused(scan, {{10.0, 90.0}, {880.0, 96.0}}, "ruler");
    }
}

TEST(NotARuler, AHandfulOfMarks) {
    const TemporaryFolder folder;
    RandomRuler ruler;
    ruler.look.marks = 6;
    const RulerScan scan = scanned(folder, ruler);
    expect_refused(scan.scan, scan.line, "ruler");
}

/// Random pixels of many kinds under random lines: whatever comes, it is refused with a plain fault.
TEST(NotARuler, RandomPixels) {
    const TemporaryFolder folder;
    std::mt19937 random(20'251);
    const auto uniform = [&](double low, double high) { return std::uniform_real_distribution(low, high)(random); };
    for (int trial = 0; trial < 60; ++trial) {
        SCOPED_TRACE("trial " + std::to_string(trial));
        cv::Mat pixels(120, 200 + static_cast<int>(random() % 1800), CV_8UC3);
        cv::RNG noise(random());
        noise.fill(pixels, cv::RNG::UNIFORM, 0, 256);
        if (trial % 3 > 0) {
            cv::GaussianBlur(pixels, pixels, {}, uniform(0.5, 12.0), uniform(0.5, 30.0));
            cv::normalize(pixels, pixels, 0.0, 255.0, cv::NORM_MINMAX);
        }
        if (trial % 4 == 0) { // upright bars at random places
            double x = 5.0;
            while (x < pixels.cols - 5) {
                cv::line(pixels, {static_cast<int>(x), 0}, {static_cast<int>(x), 119}, cv::Scalar::all(20), 2);
                x += uniform(6.0, 50.0);
            }
        }
        const ScanFile scan = scan_of(folder, pixels);
        for (int k = 0; k < 6; ++k) {
            const RulerLine line{{uniform(-20.0, pixels.cols), uniform(-5.0, 125.0)},
                                 {uniform(0.0, pixels.cols + 20.0), uniform(-5.0, 125.0)}};
            const auto scale = scale_along(scan, line, std::nullopt, std::nullopt);
            ASSERT_FALSE(scale.has_value()) << scale->px_per_mm << " px/mm from " << scale->marks << " marks";
            EXPECT_FALSE(scale.error().what.empty());
            EXPECT_FALSE(scale.error().remedy.empty());
            const auto told = scale_along(scan, line, Graduation::Millimetre, std::nullopt);
            EXPECT_FALSE(told.has_value())
                << told->px_per_mm << " px/mm from " << told->marks << " marks, scatter " << told->scatter_mm;
        }
    }
}

} // namespace
} // namespace pithward::test
