#include "libcore/measure/mean_widths.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

/// Widths from the outermost year inward; a negative one is a gap.
RingSeries widths_from(int last_year, const std::vector<double>& widths) {
    RingSeries series;
    for (const double width : widths) {
        const auto number = static_cast<int>(series.rings.size()) + 1;
        Ring ring;
        ring.year = Year(last_year - number + 1);
        ring.number = number;
        ring.width = width < 0.0 ? std::nullopt : std::optional(Millimetres(width));
        ring.absent = width == 0.0;
        series.rings.push_back(ring);
    }
    return series;
}

TEST(MeanWidths, CountAbsentRingsAsZeroAndGapsNotAtAll) {
    const RingSeries one = widths_from(2020, {1.0, 2.0, 0.0, 4.0});
    const RingSeries other = widths_from(2019, {4.0, 3.0, -1.0});
    const RingSeries* both[] = {&one, &other};
    const std::map<Year, Millimetres> expected{{Year(2019), Millimetres(3.0)}, {Year(2018), Millimetres(1.5)}};
    EXPECT_EQ(mean_widths(both, 2), expected);
    EXPECT_EQ(mean_widths(both, 1).size(), 4U);
    EXPECT_TRUE(mean_widths(both, 3).empty());
}

TEST(MeanWidths, LeaveUndatedSeriesOut) {
    RingSeries undated = widths_from(2020, {1.0, 2.0});
    for (Ring& ring : undated.rings) {
        ring.year.reset();
    }
    const RingSeries* one[] = {&undated};
    EXPECT_TRUE(mean_widths(one, 1).empty());
}

} // namespace
} // namespace pithward::test
