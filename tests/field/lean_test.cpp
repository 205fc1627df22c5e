#include "libcore/field/lean.h"

#include <gtest/gtest.h>

namespace pithward::field {
namespace {

Tree leaning_to(double azimuth_deg) {
    Tree tree;
    tree.lean_azimuth_deg = azimuth_deg;
    return tree;
}

Core cored_from(double azimuth_deg) {
    Core core;
    core.azimuth_deg = azimuth_deg;
    return core;
}

bool says(const std::optional<Remark>& remark, const char* words) {
    return remark && remark->reason.find(words) != std::string::npos;
}

TEST(Lean, AngleToALineIsThatToItsNearerEnd) {
    EXPECT_DOUBLE_EQ(angle_to_line(110.0, 110.0), 0.0);
    EXPECT_DOUBLE_EQ(angle_to_line(290.0, 110.0), 0.0);
    EXPECT_DOUBLE_EQ(angle_to_line(200.0, 110.0), 90.0);
    EXPECT_DOUBLE_EQ(angle_to_line(350.0, 10.0), 20.0);
    EXPECT_DOUBLE_EQ(angle_to_line(0.0, 250.0), 70.0);
}

TEST(Lean, NearerThanSixtyDegreesToTheLineOfLeanIsAFinding) {
    EXPECT_TRUE(lean_remark(leaning_to(110.0), cored_from(110.0), WoodType::Conifer));
    EXPECT_TRUE(lean_remark(leaning_to(110.0), cored_from(169.0), WoodType::Conifer));
    EXPECT_TRUE(lean_remark(leaning_to(350.0), cored_from(49.0), WoodType::Conifer));
    EXPECT_FALSE(lean_remark(leaning_to(110.0), cored_from(170.0), WoodType::Conifer));
    EXPECT_FALSE(lean_remark(leaning_to(110.0), cored_from(200.0), WoodType::Conifer)) << "square to the lean";
}

TEST(Lean, ReactionWoodLiesBelowInConifersAndAboveInHardwoods) {
    EXPECT_TRUE(
        says(lean_remark(leaning_to(110.0), cored_from(110.0), WoodType::Conifer), "compression wood is likely"));
    EXPECT_TRUE(says(lean_remark(leaning_to(110.0), cored_from(290.0), WoodType::Conifer), "compression wood may"));
    EXPECT_TRUE(
        says(lean_remark(leaning_to(110.0), cored_from(290.0), WoodType::RingPorous), "tension wood is likely"));
    EXPECT_TRUE(says(lean_remark(leaning_to(110.0), cored_from(110.0), WoodType::DiffusePorous), "tension wood may"));
}

TEST(Lean, OnASlopeWithNoLeanNotedAlongTheContourIsRight) {
    Tree tree;
    tree.slope_aspect_deg = 240.0;
    EXPECT_TRUE(lean_remark(tree, cored_from(240.0), WoodType::Conifer));
    EXPECT_TRUE(lean_remark(tree, cored_from(60.0), WoodType::Conifer));
    EXPECT_FALSE(lean_remark(tree, cored_from(150.0), WoodType::Conifer)) << "along the contour";
    tree.lean_deg = 0.0;
    EXPECT_FALSE(lean_remark(tree, cored_from(240.0), WoodType::Conifer)) << "noted as upright";
    tree.lean_deg = 6.0;
    tree.lean_azimuth_deg = 150.0;
    EXPECT_FALSE(lean_remark(tree, cored_from(240.0), WoodType::Conifer)) << "what was noted counts";
}

TEST(Lean, NothingIsMadeUp) {
    EXPECT_FALSE(lean_remark(leaning_to(110.0), Core{}, WoodType::Conifer));
    EXPECT_FALSE(lean_remark(Tree{}, cored_from(110.0), WoodType::Conifer));
}

} // namespace
} // namespace pithward::field
