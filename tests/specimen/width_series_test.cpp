#include "libcore/specimen/width_series.h"

#include <gtest/gtest.h>

namespace pithward {
namespace {

Ring ring(std::optional<Year> year, int number, std::optional<Millimetres> width) {
    Ring result;
    result.year = year;
    result.number = number;
    result.width = width;
    return result;
}

TEST(WidthSeries, RunsFromTheOldestRingToTheYoungest) {
    RingSeries rings;
    rings.rings = {ring(Year(2001), 1, Millimetres(1.5)), ring(Year(2000), 2, Millimetres(0.0)),
                   ring(Year(1999), 3, std::nullopt), ring(Year(1998), 4, Millimetres(2.5))};
    const WidthSeries series = width_series("A01", rings);
    EXPECT_EQ(series.id, "A01");
    EXPECT_TRUE(series.dated);
    EXPECT_EQ(series.first_year, Year(1998));
    EXPECT_EQ(series.last_year(), Year(2001));
    EXPECT_EQ(series.widths, (std::vector<std::optional<Millimetres>>{Millimetres(2.5), std::nullopt, Millimetres(0.0),
                                                                      Millimetres(1.5)}));
}

TEST(WidthSeries, WithoutYearsCountsRings) {
    RingSeries rings;
    rings.rings = {ring({}, 1, Millimetres(1.5)), ring({}, 2, Millimetres(2.5))};
    const WidthSeries series = width_series("A01", rings);
    EXPECT_FALSE(series.dated);
    EXPECT_EQ(series.first_year, Year(1));
    EXPECT_EQ(series.last_year(), Year(2));
}

} // namespace
} // namespace pithward
