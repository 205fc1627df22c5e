// Methods that others have published, against exact geometry.
#include "libcore/pith/concentric.h"
#include "libcore/pith/published.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::pith {
namespace {

using Eigen::Vector2d;

std::vector<Vector2d> circle_points(const Vector2d& centre, double radius, double half_breadth) {
    std::vector<Vector2d> points;
    for (double y = -half_breadth; y <= half_breadth; y += 0.25) {
        const double dy = y - centre.y();
        points.emplace_back(centre.x() - std::sqrt(radius * radius - dy * dy), y);
    }
    return points;
}

TEST(Duncan, AChordOf12WithAHeightOf2IsOfARadiusOf10) {
    EXPECT_DOUBLE_EQ(duncan_radius({12.0, 2.0}), 10.0); // 6^2 = 2 * (2 * 10 - 2): chords that cross
    EXPECT_DOUBLE_EQ(arc_height(12.0, 10.0), 2.0);
}

TEST(Duncan, ASemicircleIsAsHighAsItsRadius) {
    EXPECT_DOUBLE_EQ(duncan_radius({10.0, 5.0}), 5.0);
    EXPECT_DOUBLE_EQ(arc_height(10.0, 5.0), 5.0);
}

TEST(ChordAndHeight, OfATracedCircleGiveItsRadius) {
    for (const double radius : {6.0, 12.0, 30.0}) {
        for (const double beside : {0.0, 3.0}) {
            Arc arc;
            arc.points = circle_points({radius, beside}, radius, 2.0);
            const auto shape = chord_and_height(arc);
            ASSERT_TRUE(shape);
            EXPECT_NEAR(duncan_radius(*shape), radius, 0.04 * radius) << radius << " mm, " << beside << " mm beside";
        }
    }
}

TEST(ChordAndHeight, AnArcThatBendsTheOtherWayHasANegativeHeight) {
    Arc arc;
    arc.points = circle_points({10.0, 0.0}, 10.0, 2.0);
    for (Vector2d& point : arc.points) {
        point.x() = -point.x();
    }
    EXPECT_LT(chord_and_height(arc)->height_mm, 0.0);
}

TEST(ConcentricCentre, IsFoundExactlyOnCircles) {
    const Vector2d centre(9.0, -3.5);
    std::vector<std::vector<Vector2d>> curves;
    for (const double radius : {10.0, 11.5, 13.1}) {
        curves.push_back(circle_points(centre, radius, 2.3));
    }
    const auto found = concentric_centre(curves, {5.0, 0.0});
    ASSERT_TRUE(found);
    EXPECT_NEAR((*found - centre).norm(), 0.0, 1e-4);
}

TEST(RadiusRange, HoldsTheRadiusAndGrowsWithTheDeviation) {
    const DistanceRange sure = radius_range(4.6, 10.0, 0.005);
    const DistanceRange unsure = radius_range(4.6, 10.0, 0.05);
    EXPECT_LT(sure.low_mm, 10.0);
    EXPECT_GT(*sure.high_mm, 10.0);
    EXPECT_LT(unsure.low_mm, sure.low_mm);
    EXPECT_GT(*unsure.high_mm, *sure.high_mm);
    EXPECT_FALSE(radius_range(4.6, 10.0, 0.5).high_mm) << "an arc that may be flat bounds nothing";
}

TEST(Stem, ItsRadiusIsHalfTheDiameterLessBark) {
    EXPECT_DOUBLE_EQ(stem_radius(30.0, 12.0), 138.0);
}

TEST(Stem, DistanceAllowsForShrinkageAndIsNeverNegative) {
    // 96 mm of dry wood were 100 mm fresh at 4 %.
    const DistanceRange range = distance_by_stem(110.0, 96.0);
    EXPECT_NEAR(range.middle_mm, 10.0, 1e-9);
    EXPECT_LT(range.low_mm, 10.0);
    EXPECT_GT(*range.high_mm, 10.0);
    EXPECT_EQ(distance_by_stem(50.0, 96.0).middle_mm, 0.0);
}

TEST(DistanceRange, OnesThatDoNotMeetDisagree) {
    EXPECT_TRUE((DistanceRange{5.0, 4.0, 6.0}.meets({8.0, 5.5, std::nullopt})));
    EXPECT_FALSE((DistanceRange{5.0, 4.0, 6.0}.meets({8.0, 6.5, 9.0})));
    EXPECT_FALSE((DistanceRange{8.0, 6.5, std::nullopt}.meets({5.0, 4.0, 6.0})));
}

} // namespace
} // namespace pithward::pith
