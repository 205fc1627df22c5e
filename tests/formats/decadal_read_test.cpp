// Each clause of the decadal file (design, section 6), as read.
#include "libcore/formats/decadal.h"
#include "tests/formats/series_support.h"

namespace pithward {
namespace {

using namespace test;
using Unit = WidthSeries::Unit;

TEST(DecadalRead, IdentifierYearAndValuesStandInTheirColumns) {
    const auto table = table_in(read_decadal, "A01N    1988   123   456\n"
                                              "A01N    1990     7   999\n");
    ASSERT_EQ(table.series.size(), 1U);
    EXPECT_EQ(table.series[0], series("A01N", 1988, {1.23, 4.56, 0.07}, Unit::HundredthMm));
    EXPECT_TRUE(table.remarks.empty());
}

TEST(DecadalRead, TheEndMarkGivesEachSeriesItsUnit) {
    const auto table = table_in(read_decadal, "HUNDRED 1990   123   999\n"
                                              "THOUSAND1990   123 -9999\n");
    ASSERT_EQ(table.series.size(), 2U);
    EXPECT_EQ(table.series[0], series("HUNDRED", 1990, {1.23}, Unit::HundredthMm));
    EXPECT_EQ(table.series[1], series("THOUSAND", 1990, {0.123}, Unit::ThousandthMm));
}

TEST(DecadalRead, ASeriesEndingInAYear9HasItsMarkAlone) {
    const auto table = table_in(read_decadal, "A       1997   123   124   125\n"
                                              "A       2000   999\n"
                                              "B       1999    50\n"
                                              "B       2000 -9999\n");
    ASSERT_EQ(table.series.size(), 2U);
    EXPECT_EQ(table.series[0].last_year(), Year(1999));
    EXPECT_EQ(widths(table.series[1]), (std::vector{0.05}));
}

TEST(DecadalRead, A999InsideASeriesIsAValue) {
    // Amid a line, as the last value of a decade, and just before the end mark.
    const auto table = table_in(read_decadal, "A       1986   999   100   200   999\n"
                                              "A       1990   300   999   999\n");
    EXPECT_EQ(widths(table.series[0]), (std::vector{9.99, 1.0, 2.0, 9.99, 3.0, 9.99}));
    EXPECT_EQ(table.series[0].unit, Unit::HundredthMm);
    // In 0.001 mm it is no mark at all.
    EXPECT_EQ(widths(table_in(read_decadal, "A       1990   999 -9999\n").series[0]), (std::vector{0.999}));
}

TEST(DecadalRead, ZeroIsAnAbsentRingAndANegativeCodeAGap) {
    const auto table = table_in(read_decadal, "A       1990   100     0  -999    -2 -8888 -9999   200 -9999\n");
    EXPECT_EQ(widths(table.series[0]), (std::vector{0.1, 0.0, gap, gap, gap, gap, 0.2}));
}

TEST(DecadalRead, YearsBelowMinus999TakeColumn8) {
    const auto table =
        table_in(read_decadal, "ABCDEFG-1002   100   101\n"
                               "ABCDEFG-1000   102   103   104   105   106   107   108   109   110   111\n"
                               "ABCDEFG -990   112   999\n"
                               "HLL     -991    50\n"
                               "HLL     -990    51   999\n");
    ASSERT_EQ(table.series.size(), 2U);
    EXPECT_EQ(table.series[0].id, "ABCDEFG");
    EXPECT_EQ(table.series[0].first_year, Year(-1002));
    EXPECT_EQ(table.series[0].last_year(), Year(-990));
    EXPECT_EQ(table.series[1].id, "HLL");
    EXPECT_EQ(table.series[1].first_year, Year(-991));
    EXPECT_TRUE(table.remarks.empty());
}

TEST(DecadalRead, AMinusThatEndsAnIdentifierIsToldFromThatOfAYear) {
    const auto table = table_in(read_decadal, "ABCDEFG-1998   100   101\n"
                                              "ABCDEFG-2000   102   999\n");
    EXPECT_EQ(table.series[0].id, "ABCDEFG-");
    EXPECT_EQ(table.series[0].first_year, Year(1998));
}

TEST(DecadalRead, WhereALineDoesNotTellWhoseAMinusIsTheFileDoes) {
    const std::string one_line = "ABCDEFG-1990   100   101   999\n";
    EXPECT_EQ(table_in(read_decadal, one_line).series[0].first_year, Year(-1990));
    const auto table = table_in(read_decadal, one_line + "BCDEFGH-1998   100   101\nBCDEFGH-2000   999\n");
    EXPECT_EQ(table.series[0].id, "ABCDEFG-");
    EXPECT_EQ(table.series[0].first_year, Year(1990));
}

TEST(DecadalRead, YearsRunThroughZero) {
    const auto table = table_in(read_decadal, "A         -2    10    11\n"
                                              "A          0    12    13   999\n");
    EXPECT_EQ(table.series[0].first_year, Year(-2));
    EXPECT_EQ(table.series[0].last_year(), Year(1));
}

TEST(DecadalRead, TextAfterTheTenthValueIsAComment) {
    const auto table =
        table_in(read_decadal, "A       1988   100   101                                                 first note\n"
                               "A       1990   102   103   104   105   106   107   108   109   110   111second note\n"
                               "A       2000   112   999  end note\n");
    EXPECT_EQ(widths(table.series[0]).size(), 13U);
    const std::map<Year, std::string> comments{
        {Year(1988), "first note"}, {Year(1990), "second note"}, {Year(2000), "end note"}};
    EXPECT_EQ(table.series[0].comments, comments);
}

TEST(DecadalRead, UpToThreeHeaderLinesAreKeptAsTheyStand) {
    const std::string data = "A       1990   100   999\n";
    for (const std::vector<std::string>& headers :
         {std::vector<std::string>{},
          {"a line of words"},
          {"XYZ    1 A place     ", "XYZ    2 1990 2000"},
          {"XYZ    1 A place", "XYZ    2 A country     1200  4500-11000 __ 1990 2000", "XYZ    3 people"}}) {
        std::string text;
        for (const std::string& header : headers) {
            text += header + "\n";
        }
        const auto table = table_in(read_decadal, text + data);
        EXPECT_EQ(table.headers, headers);
        EXPECT_EQ(table.series.size(), 1U);
    }
}

TEST(DecadalRead, LineEndsOfAllSystemsAreRead) {
    const std::string lines[] = {"XYZ    1 A place", "A       1999   100", "A       2000   101   999"};
    for (const std::string end : {"\n", "\r\n", "\r", "\r\r\n"}) {
        std::string all_but_the_end = lines[0];
        all_but_the_end.append(end).append(lines[1]).append(end).append(lines[2]);
        const auto table = table_in(read_decadal, all_but_the_end + end);
        EXPECT_EQ(table.headers, std::vector<std::string>{lines[0]});
        EXPECT_EQ(widths(table.series[0]), (std::vector{1.0, 1.01}));
        // The last line may lack its end.
        EXPECT_EQ(table_in(read_decadal, all_but_the_end).series, table.series);
        // Old systems end a file with the character 26.
        EXPECT_EQ(table_in(read_decadal, all_but_the_end + end + "\x1A").series, table.series);
    }
}

TEST(DecadalRead, IdentifiersMayHoldSpacesAndLettersOfOtherScripts) {
    const auto table = table_in(read_decadal, "TOU 22B 1990   100   999\n"
                                              "H\xC3\xB6he 01 1990   101   999\n");
    EXPECT_EQ(table.series[0].id, "TOU 22B");
    EXPECT_EQ(table.series[1].id, "H\xC3\xB6he 01");
}

TEST(DecadalRead, WidthsOfSixDigitsTouch) {
    const auto table = table_in(read_decadal, "A       1990123456123457 -9999\n");
    EXPECT_EQ(widths(table.series[0]), (std::vector{123.456, 123.457}));
}

} // namespace
} // namespace pithward
