#include "libcore/results/growth.h"

#include <gtest/gtest.h>

#include <array>

namespace pithward::results {
namespace {

/// Rings from the bark inward; below 0: a gap.
GrowthCore core_of(int outermost, const std::vector<double>& widths, std::optional<int> pith) {
    GrowthCore core;
    for (std::size_t k = 0; k < widths.size(); ++k) {
        Ring ring;
        ring.year = Year(outermost - static_cast<int>(k));
        if (widths[k] >= 0.0) {
            ring.width = Millimetres(widths[k]);
        }
        core.series.rings.push_back(ring);
    }
    core.pith = pith ? std::optional(Year(*pith)) : std::nullopt;
    return core;
}

TEST(Growth, MeansByYearTakeWhatIsThere) {
    const std::array cores{core_of(2002, {1.0, 0.0, 3.0}, 2000), core_of(2002, {3.0, -1.0}, std::nullopt)};
    const auto means = growth_by_year(cores);
    ASSERT_EQ(means.size(), 3U);
    EXPECT_EQ(means[0].at, 2000);
    EXPECT_DOUBLE_EQ(means[0].width_mm, 3.0);
    EXPECT_DOUBLE_EQ(means[1].width_mm, 0.0) << "an absent ring counts, a gap does not";
    EXPECT_EQ(means[1].cores, 1);
    EXPECT_DOUBLE_EQ(means[2].width_mm, 2.0);
    EXPECT_EQ(means[2].cores, 2);
    EXPECT_FALSE(means[2].basal_area_mm2);
}

TEST(Growth, AgeCountsFromThePith) {
    // The first core's pith is in the ring of 2000, the second lacks the four rings of 1990 to 1993.
    std::array cores{core_of(2002, {1.0, 2.0, 3.0}, 2000), core_of(1995, {5.0, 7.0}, 1990),
                     core_of(2002, {9.0}, std::nullopt)};
    cores[0].basal_area = {BasalAreaIncrement{10.0, 9.0, 11.0}, std::nullopt, BasalAreaIncrement{30.0, 29.0, 31.0}};
    const auto means = growth_by_age(cores);
    ASSERT_EQ(means.size(), 5U);
    EXPECT_EQ(means[0].at, 1);
    EXPECT_DOUBLE_EQ(means[0].width_mm, 3.0);
    EXPECT_DOUBLE_EQ(*means[0].basal_area_mm2, 30.0);
    EXPECT_FALSE(means[1].basal_area_mm2);
    EXPECT_EQ(means[3].at, 5);
    EXPECT_DOUBLE_EQ(means[3].width_mm, 7.0);
    EXPECT_TRUE(growth_by_age({}).empty());
}

TEST(Growth, YearsAreCountedInStretches) {
    const std::array years{1899, 1900, 1909, 1925};
    const auto counts = year_histogram(years, 10);
    ASSERT_EQ(counts.size(), 4U);
    EXPECT_EQ(counts[0].from, 1890);
    EXPECT_EQ(counts[0].to, 1899);
    EXPECT_EQ(counts[0].trees, 1);
    EXPECT_EQ(counts[1].trees, 2);
    EXPECT_EQ(counts[2].trees, 0) << "without gaps";
    EXPECT_EQ(counts[3].trees, 1);
    const std::array before_christ{-5, 3};
    EXPECT_EQ(year_histogram(before_christ, 10)[0].from, -10);
    EXPECT_TRUE(year_histogram({}, 10).empty());
}

} // namespace
} // namespace pithward::results
