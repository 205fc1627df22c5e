#include "libimaging/boundary/wood/vessel_zone.h"

#include <gtest/gtest.h>

namespace pithward::boundary {
namespace {

/// Rings from bark to pith: `latewood` columns without vessels, then `zone` columns full of them.
std::vector<float> rings(int count, int latewood, int zone) {
    std::vector<float> line;
    for (int k = 0; k < count; ++k) {
        line.insert(line.end(), static_cast<std::size_t>(latewood), 0.0F);
        line.insert(line.end(), static_cast<std::size_t>(zone), 2.0F);
    }
    return line;
}

TEST(VesselZone, LatewoodRunsFromTheBoundaryToTheFirstLargeVessels) {
    const auto latewood = latewood_beside_vessels(rings(3, 30, 20), {0.0, 50.0, 100.0}, 6.0, 0.5);
    ASSERT_EQ(latewood.size(), 2U);
    EXPECT_NEAR(latewood[0], 30.0, 1.0);
    EXPECT_NEAR(latewood[1], 30.0, 1.0);
}

TEST(VesselZone, AShortGapBetweenVesselsIsOfTheZoneAndALongOneNot) {
    std::vector<float> line = rings(1, 30, 20);
    std::fill(line.begin() + 38, line.begin() + 42, 0.0F);
    EXPECT_NEAR(latewood_beside_vessels(line, {0.0, 50.0}, 6.0, 0.5)[0], 30.0, 1.0);
    EXPECT_NEAR(latewood_beside_vessels(line, {0.0, 50.0}, 2.0, 0.5)[0], 42.0, 1.0);
}

TEST(VesselZone, IsNotToldWhereNoVesselsStandOut) {
    EXPECT_EQ(latewood_beside_vessels(std::vector<float>(60, 1.0F), {0.0, 50.0}, 6.0, 0.5)[0], 0.0);
    EXPECT_EQ(latewood_beside_vessels(rings(1, 3, 2), {0.0, 5.0}, 6.0, 0.5)[0], 0.0);
    EXPECT_TRUE(latewood_beside_vessels({}, {}, 6.0, 0.5).empty());
}

} // namespace
} // namespace pithward::boundary
