#include "libcore/measure/series_summary.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

TEST(SeriesSummary, CountsAbsentRingsAsZeroAndLeavesGapsOut) {
    Reading reading = straight_reading({1.0, 3.0, 5.0, 6.0});
    reading.absent_rings = {absent_at(2)};
    reading.breaks = {break_at(3.5, 4.1, Break::Kind::LostWood)};
    const SeriesSummary summary = summary_of(measured(reading));
    EXPECT_EQ(summary.rings, 4);
    EXPECT_EQ(summary.measured, 3);
    EXPECT_EQ(summary.absent, 1);
    EXPECT_NEAR(summary.length.value(), 3.0, 1e-9);
    EXPECT_NEAR(summary.mean->value(), 1.0, 1e-9);
}

TEST(SeriesSummary, OfNothingHasNoMean) {
    EXPECT_EQ(summary_of(RingSeries{}), SeriesSummary{});
    EXPECT_FALSE(summary_of(RingSeries{}).mean.has_value());
}

} // namespace
} // namespace pithward::test
