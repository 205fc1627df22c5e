// Each clause of the decadal file (design, section 6), as written.
#include "libcore/formats/decadal.h"
#include "tests/formats/series_support.h"

namespace pithward {
namespace {

using namespace test;
using Unit = WidthSeries::Unit;

WidthTable table_of(std::vector<WidthSeries> all) {
    WidthTable table;
    table.series = std::move(all);
    return table;
}

TEST(DecadalWrite, LinesEndWithTheDecadeAndSeriesWithTheMarkOfTheirUnit) {
    const auto out = written(write_decadal, table_of({series("A01N", 1988, {1.23, 4.56, 0.07}, Unit::HundredthMm),
                                                      series("A01S", 1990, {1.234, 0.0}, Unit::ThousandthMm)}));
    EXPECT_EQ(out.text, "A01N    1988   123   456\n"
                        "A01N    1990     7   999\n"
                        "A01S    1990  1234     0 -9999\n");
    EXPECT_TRUE(out.remarks.empty());
}

TEST(DecadalWrite, ASeriesEndingInAYear9HasItsMarkAlone) {
    const auto out = written(write_decadal, table_of({series("A", 1998, {1.23, 4.56}, Unit::HundredthMm)}));
    EXPECT_EQ(out.text, "A       1998   123   456\nA       2000   999\n");
}

TEST(DecadalWrite, TenHundredthsLessOneIsNeverAltered) {
    // 9.99 mm would read as an end mark in 0.01 mm.
    const auto out = written(write_decadal, table_of({series("A", 1990, {1.23, 9.99, 4.56}, Unit::HundredthMm)}));
    EXPECT_EQ(out.text, "A       1990  1230  9990  4560 -9999\n");
    EXPECT_TRUE(mentions(out.remarks, "series A is written in 0.001 mm"));
}

TEST(DecadalWrite, FinerValuesThanTheUnitTakeTheFinerUnit) {
    const auto out = written(write_decadal, table_of({series("A", 1990, {1.23, 4.567}, Unit::HundredthMm)}));
    EXPECT_EQ(out.text, "A       1990  1230  4567 -9999\n");
}

TEST(DecadalWrite, MeasuredWidthsAreRoundedToThousandths) {
    const auto out = written(write_decadal, table_of({series("A", 1990, {1.23449, 1.23451})}));
    EXPECT_EQ(out.text, "A       1990  1234  1235 -9999\n");
}

TEST(DecadalWrite, AGapIsANegativeCodeAndNeverZero) {
    const auto out = written(write_decadal, table_of({series("A", 1990, {1.0, gap, 0.0, gap}, Unit::HundredthMm)}));
    EXPECT_EQ(out.text, "A       1990   100  -999     0  -999   999\n");
}

TEST(DecadalWrite, YearsBelowMinus999TakeColumn8) {
    const auto out = written(write_decadal, table_of({series("ABCDEFGH", -1001, {1, 2, 3}, Unit::HundredthMm)}));
    EXPECT_EQ(out.text, "ABCEFGH-1001   100\nABCEFGH-1000   200   300   999\n");
    EXPECT_TRUE(mentions(out.remarks, "series ABCDEFGH is called ABCEFGH"));
    EXPECT_EQ(written(write_decadal, table_of({series("A", -999, {1}, Unit::HundredthMm)})).text,
              "A       -999   100   999\n");
}

TEST(DecadalWrite, HeadersAndCommentsAreWritten) {
    WidthTable table = table_of({series("A", 1989, {1, 2}, Unit::HundredthMm)});
    table.headers = {"XYZ    1 A place   ", "", "free words"};
    table.series[0].comments = {{Year(1989), "first"}, {Year(1990), "second"}};
    const auto out = written(write_decadal, table);
    EXPECT_EQ(out.text, "XYZ    1 A place   \n\nfree words\n"
                        "A       1989   100                                                       first\n"
                        "A       1990   200   999                                                 second\n");
}

TEST(DecadalWrite, LongIdentifiersAreShortenedWithoutCollisionsAndReported) {
    const auto out =
        written(write_decadal, table_of({series("PINEHILL-01A", 1990, {1}), series("PINEHILL-01B", 1990, {1}),
                                         series("PINLL01B", 1990, {1}), series("A", 1990, {1})}));
    const auto back = table_in(read_decadal, out.text);
    EXPECT_EQ(back.series[0].id, "PINLL01A");
    EXPECT_EQ(back.series[1].id, "PINLL0_2"); // PINLL01B is there already, under its own name.
    EXPECT_EQ(back.series[2].id, "PINLL01B");
    EXPECT_EQ(back.series[3].id, "A");
    EXPECT_EQ(out.remarks.size(), 2U);
    EXPECT_TRUE(mentions(out.remarks, "series PINEHILL-01A is called PINLL01A"));
}

TEST(DecadalWrite, WhatTheFileCantHoldIsRefused) {
    EXPECT_TRUE(contains(refusal(write_decadal, table_of({})), "no series"));
    EXPECT_TRUE(contains(refusal(write_decadal, table_of({series("A", 9990, {1, 1, 1, 1, 1, 1, 1, 1, 1, 1})})),
                         "-9999 to 9998"));
    EXPECT_TRUE(contains(refusal(write_decadal, table_of({series("A", -10'000, {1})})), "-9999 to 9998"));
    EXPECT_TRUE(contains(refusal(write_decadal, table_of({series("A", 1990, {1000.0})})), "six columns"));
    // A measured width must not turn into a locally absent ring.
    EXPECT_TRUE(contains(refusal(write_decadal, table_of({series("A", 1990, {1, 0.0004})})), "year 1991"));
    WidthTable table = table_of({series("A", 1990, {1})});
    table.headers = {"B       1990   100   999"};
    EXPECT_TRUE(contains(refusal(write_decadal, table), "header line 1"));
}

TEST(DecadalWrite, AnUndatedSeriesIsRefusedSinceYearsWouldBeInvented) {
    WidthTable table = table_of({series("A", 1, {1, 2}, Unit::HundredthMm)});
    table.series[0].dated = false;
    EXPECT_TRUE(contains(refusal(write_decadal, table), "series A: it is undated"));
}

} // namespace
} // namespace pithward
