#include "libcore/measure/leg_line.h"
#include "libimaging/strip/strip_geometry.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::test {
namespace {

const Calibration even{.px_per_mm_x = 50.0, .px_per_mm_y = 50.0};
const Calibration uneven{.px_per_mm_x = 94.0, .px_per_mm_y = 47.0};
const std::vector<ImagePoint> bent{{100.0, 300.0}, {900.0, 310.0}, {1500.0, 380.0}, {1500.0, 380.0}, {2300.0, 360.0}};

/// Distance of a place from the nearest segment of a polyline, px.
double off_line(ImagePoint p, const std::vector<ImagePoint>& line) {
    double nearest = 1e9;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const ImagePoint step = line[i + 1] - line[i];
        const double length = std::hypot(step.x, step.y);
        if (length > 0.0) {
            const ImagePoint away = p - line[i];
            const double share = std::clamp((away.x * step.x + away.y * step.y) / (length * length), 0.0, 1.0);
            nearest = std::min(nearest, std::hypot(away.x - share * step.x, away.y - share * step.y));
        }
    }
    return nearest;
}

TEST(StripGeometry, TheMiddleLiesOnThePolyline) {
    for (const Calibration& calibration : {even, uneven}) {
        const StripGeometry geometry(bent, calibration);
        for (int k = 0; 0.37 * k <= geometry.length_mm(); ++k) {
            const double s = 0.37 * k;
            ASSERT_LT(off_line(geometry.image_point({s, 0.0}), bent), 1e-9) << s;
        }
    }
}

TEST(StripGeometry, SIsTheLengthAlongThePathInMillimetres) {
    for (const Calibration& calibration : {even, uneven}) {
        const StripGeometry geometry(bent, calibration);
        const LegLine line(Leg{"", bent, {}}, calibration);
        EXPECT_NEAR(geometry.length_mm(), line.length_mm(), 1e-12);
        double walked = 0.0;
        ImagePoint last = geometry.image_point({0.0, 0.0});
        constexpr double step = 0.001;
        for (int i = 1; i * step < geometry.length_mm(); ++i) {
            const ImagePoint here = geometry.image_point({i * step, 0.0});
            walked += calibration.distance(last, here).value();
            last = here;
        }
        EXPECT_NEAR(walked, geometry.length_mm(), 0.002);
    }
}

TEST(StripGeometry, GoesOnStraightBeyondBothEnds) {
    const StripGeometry geometry({{100.0, 200.0}, {600.0, 200.0}}, even);
    EXPECT_NEAR(geometry.image_point({-2.0, 0.0}).x, 0.0, 1e-9);
    EXPECT_NEAR(geometry.image_point({12.0, 0.0}).x, 700.0, 1e-9);
}

TEST(StripGeometry, UIsPositiveToTheRightOfTheWalkerAndInMillimetres) {
    const StripGeometry geometry({{100.0, 200.0}, {600.0, 200.0}}, uneven);
    const ImagePoint right = geometry.image_point({1.0, 2.0});
    EXPECT_NEAR(right.x, 194.0, 1e-9);
    EXPECT_NEAR(right.y, 294.0, 1e-9);
    const StripGeometry back({{600.0, 200.0}, {100.0, 200.0}}, uneven);
    EXPECT_NEAR(back.image_point({1.0, 2.0}).y, 106.0, 1e-9);
}

TEST(StripGeometry, AcrossIsSquareToThePathOnTheWood) {
    const StripGeometry geometry({{100.0, 200.0}, {500.0, 500.0}}, uneven);
    const ImagePoint middle = geometry.image_point({3.0, 0.0});
    const ImagePoint beside = geometry.image_point({3.0, 1.0});
    const ImagePoint ahead = geometry.image_point({4.0, 0.0});
    const auto mm = [](ImagePoint a, ImagePoint b) {
        return ImagePoint{(b.x - a.x) / uneven.px_per_mm_x, (b.y - a.y) / uneven.px_per_mm_y};
    };
    const ImagePoint u = mm(middle, beside);
    const ImagePoint s = mm(middle, ahead);
    EXPECT_NEAR(u.x * s.x + u.y * s.y, 0.0, 1e-9);
    EXPECT_NEAR(std::hypot(u.x, u.y), 1.0, 1e-9);
}

TEST(StripGeometry, DirectionsAgreeWithFiniteDifferences) {
    for (const Calibration& calibration : {even, uneven}) {
        const StripGeometry geometry({{100.0, 300.0}, {2300.0, 420.0}}, calibration);
        for (const double slope : {-1.5, -0.2, 0.0, 0.4, 2.0}) {
            constexpr double h = 1e-4;
            const ImagePoint a = geometry.image_point({9.0 - slope * h, -h});
            const ImagePoint b = geometry.image_point({9.0 + slope * h, h});
            const double direction = line_direction(std::atan2(b.y - a.y, b.x - a.x));
            EXPECT_NEAR(geometry.image_direction(9.0, slope), direction, 1e-6) << slope;
        }
    }
}

TEST(StripGeometry, TheStripDoesNotTearAtABend) {
    const StripGeometry geometry(bent, even);
    ImagePoint last = geometry.image_point({0.0, 3.0});
    for (int k = 1; 0.02 * k < geometry.length_mm(); ++k) {
        const double s = 0.02 * k;
        const ImagePoint here = geometry.image_point({s, 3.0});
        EXPECT_GT(here.x, last.x);
        EXPECT_LT(std::hypot(here.x - last.x, here.y - last.y), 2.0);
        last = here;
    }
}

} // namespace
} // namespace pithward::test
