#include "libcore/field/depth.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward::field {
namespace {

/// 30 mm of wood, and the pith this far beyond.
Reading core_with_pith(double distance_mm, double low_mm, double high_mm) {
    Reading reading = test::straight_reading({1.0, 11.0, 21.0, 31.0});
    Pith pith;
    pith.distance = Millimetres(distance_mm);
    pith.distance_low = Millimetres(low_mm);
    pith.distance_high = Millimetres(high_mm);
    pith.missing_rings = pith.missing_low = pith.missing_high = 1;
    reading.pith = pith;
    return reading;
}

Tree tree_of(double dbh_cm, std::optional<double> bark_mm) {
    Tree tree;
    tree.dbh_cm = dbh_cm;
    tree.bark_mm = bark_mm;
    return tree;
}

Core at_breast_height() {
    Core core;
    core.core_height_cm = 130.0;
    return core;
}

std::optional<Remark> remark_on(const Tree& tree, const Core& core, const Reading& reading) {
    return depth_remark(tree, core, reading, test::measured(reading));
}

TEST(Depth, ShrinkageIsTwoToSixPerCent) {
    const DepthRange fresh = fresh_depth(94.0, 94.0);
    EXPECT_NEAR(fresh.high_mm, 100.0, 1e-9);
    EXPECT_NEAR(fresh.low_mm, 94.0 / 0.98, 1e-9);
}

TEST(Depth, RadiusAllowsForBarkTaperAndEccentricGrowth) {
    const auto at_breast = wood_radius(tree_of(20.0, 10.0), at_breast_height());
    ASSERT_TRUE(at_breast);
    EXPECT_NEAR(at_breast->low_mm, 81.0, 1e-9); // (100 - 10) less and more a tenth
    EXPECT_NEAR(at_breast->high_mm, 99.0, 1e-9);
    Core low;
    low.core_height_cm = 30.0; // a metre lower: up to 10 mm thicker
    EXPECT_NEAR(wood_radius(tree_of(20.0, 10.0), low)->high_mm, 1.1 * 95.0, 1e-9);
    EXPECT_LT(wood_radius(tree_of(20.0, std::nullopt), at_breast_height())->low_mm, 90.0);
    EXPECT_FALSE(wood_radius(Tree{}, at_breast_height()));
}

TEST(Depth, ACoreThatGoesWithTheStemIsNoFinding) {
    // Half of 80 mm less 5 mm of bark: 35 mm of wood; dry 30 mm and 4 mm to the pith.
    EXPECT_FALSE(remark_on(tree_of(8.0, 5.0), at_breast_height(), core_with_pith(4.0, 3.0, 5.0)));
    // Only shrinkage makes these meet: 34 dry are 35 to 36 fresh, and a tenth more of 32 is 35.2.
    EXPECT_FALSE(remark_on(tree_of(7.4, 5.0), at_breast_height(), core_with_pith(4.0, 3.5, 5.0)));
}

TEST(Depth, ACoreThatCannotBeHalfOfTheStemIsAFinding) {
    const auto too_long = remark_on(tree_of(5.0, 3.0), at_breast_height(), core_with_pith(4.0, 3.0, 5.0));
    ASSERT_TRUE(too_long);
    EXPECT_EQ(too_long->end, Remark::End::Inner);
    EXPECT_NE(too_long->reason.find("diameter"), std::string::npos);
    EXPECT_TRUE(remark_on(tree_of(30.0, 3.0), at_breast_height(), core_with_pith(4.0, 3.0, 5.0)));
}

TEST(Depth, NothingIsSaidWithoutPithDiameterOrBark) {
    Reading reading = core_with_pith(4.0, 3.0, 5.0);
    EXPECT_FALSE(remark_on(Tree{}, at_breast_height(), reading));
    reading.outer = OuterWood::Lost;
    EXPECT_FALSE(remark_on(tree_of(5.0, 3.0), at_breast_height(), reading));
    reading.outer = OuterWood::Complete;
    reading.pith.reset();
    EXPECT_FALSE(remark_on(tree_of(5.0, 3.0), at_breast_height(), reading));
}

} // namespace
} // namespace pithward::field
