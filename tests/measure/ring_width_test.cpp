#include "libcore/measure/ring_width.h"
#include "libcore/specimen/units.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

namespace pithward {
namespace {

constexpr double exact_mm = 1e-9;
constexpr double square = 0.5 * std::numbers::pi;

double distance(WoodVector a, WoodVector b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

/// Direction of the circle about `centre` at a place.
double arc_tangent(WoodVector at, WoodVector centre) {
    return line_direction(std::atan2(at.y - centre.y, at.x - centre.x) + square);
}

/// Edges on two circles about one centre, met by a straight path.
RingEdges arcs(WoodVector outer, WoodVector inner, WoodVector centre) {
    return {.outer = outer,
            .inner = inner,
            .outer_tangent = arc_tangent(outer, centre),
            .inner_tangent = arc_tangent(inner, centre),
            .along_path_mm = distance(outer, inner)};
}

TEST(RingWidth, IsTheLengthBetweenBoundariesThatAreSquareToThePath) {
    const RingEdges edges{.outer = {1.0, 2.0},
                          .inner = {2.25, 2.0},
                          .outer_tangent = square,
                          .inner_tangent = square,
                          .along_path_mm = 1.25};
    EXPECT_NEAR(ring_width(edges).width_mm, 1.25, exact_mm);
}

TEST(RingWidth, OfParallelBoundariesIsTheLengthTimesTheCosine) {
    for (const double path_deg : {0.0, 37.0, 90.0, 180.0, 251.0}) {
        for (const double tilt_deg : {-60.0, -12.0, 5.0, 45.0}) {
            const double path = radians(path_deg);
            const double tangent = line_direction(path + square + radians(tilt_deg));
            const RingEdges edges{.outer = {3.0, 4.0},
                                  .inner = {3.0 + 0.8 * std::cos(path), 4.0 + 0.8 * std::sin(path)},
                                  .outer_tangent = tangent,
                                  .inner_tangent = tangent,
                                  .along_path_mm = 0.8};
            EXPECT_NEAR(ring_width(edges).width_mm, 0.8 * std::cos(radians(tilt_deg)), exact_mm)
                << path_deg << " and " << tilt_deg << " degrees";
        }
    }
}

TEST(RingWidth, OfArcsAboutOneCentreIsTheDifferenceOfTheDistancesToIt) {
    const unsigned seed = 20240611;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> place(-30.0, 30.0);
    std::uniform_real_distribution<double> share(0.5, 0.99);
    for (int i = 0; i < 1000; ++i) {
        const WoodVector centre{place(random), place(random)};
        const WoodVector outer{place(random), place(random)};
        // The inner place lies nearer to the centre, a little to the side of the straight way to it.
        const double k = share(random);
        const WoodVector way{centre.x - outer.x, centre.y - outer.y};
        const double side = 0.3 * (share(random) - 0.75) * (1.0 - k);
        const WoodVector inner{outer.x + (1.0 - k) * way.x - side * way.y, outer.y + (1.0 - k) * way.y + side * way.x};
        ASSERT_NEAR(ring_width(arcs(outer, inner, centre)).width_mm, distance(outer, centre) - distance(inner, centre),
                    exact_mm)
            << "seed " << seed << ", case " << i;
    }
}

TEST(RingWidth, IsRightWhereThePathPassesBesideThePith) {
    for (const double beside_mm : {1.0, 2.0, 3.0, 4.0, 5.0}) {
        const WoodVector pith{20.0, beside_mm};
        for (int half = 0; half < 39; ++half) {
            const double x = 0.5 * half;
            const WoodVector outer{x, 0.0};
            const WoodVector inner{x + 0.5, 0.0};
            EXPECT_NEAR(ring_width(arcs(outer, inner, pith)).width_mm, distance(outer, pith) - distance(inner, pith),
                        exact_mm)
                << beside_mm << " mm beside the pith, at " << x;
        }
    }
}

TEST(RingWidth, DoesNotDependOnTheWayThePathRuns) {
    const WoodVector centre{12.0, 3.0};
    const RingEdges there = arcs({1.0, 0.0}, {2.0, 0.0}, centre);
    RingEdges back = there;
    std::swap(back.outer, back.inner);
    std::swap(back.outer_tangent, back.inner_tangent);
    EXPECT_NEAR(ring_width(there).width_mm, ring_width(back).width_mm, exact_mm);
}

TEST(RingWidth, DeviationJoinsThoseOfTheTwoPlaces) {
    const RingEdges edges{.outer = {0.0, 0.0},
                          .inner = {1.0, 0.0},
                          .outer_tangent = square,
                          .inner_tangent = square,
                          .along_path_mm = 1.0,
                          .outer_sd_mm = 0.03,
                          .inner_sd_mm = 0.04};
    EXPECT_NEAR(ring_width(edges).sd_mm, 0.05, exact_mm);
}

TEST(RingWidth, DeviationHoldsThatOfTheDirection) {
    // A ring met at 40 degrees, its direction known to `tilt_sd`: the spread of the width over drawn directions.
    const double tilt = radians(40.0);
    RingEdges edges{.outer = {0.0, 0.0}, .inner = {2.0, 0.0}, .along_path_mm = 2.0};
    std::mt19937 random(7);
    std::normal_distribution<double> error(0.0, tilt_sd);
    double sum = 0.0;
    double square_sum = 0.0;
    constexpr int draws = 20000;
    for (int i = 0; i < draws; ++i) {
        edges.outer_tangent = square + tilt + error(random);
        edges.inner_tangent = edges.outer_tangent;
        const double width = ring_width(edges).width_mm;
        sum += width;
        square_sum += width * width;
    }
    const double spread = std::sqrt(square_sum / draws - (sum / draws) * (sum / draws));
    edges.outer_tangent = edges.inner_tangent = square + tilt;
    EXPECT_NEAR(ring_width(edges).sd_mm, spread, 0.03 * spread);
}

} // namespace
} // namespace pithward
