#include "libcore/formats/series_csv.h"
#include "tests/formats/series_support.h"

namespace pithward {
namespace {

using namespace test;
using Unit = WidthSeries::Unit;

TEST(SeriesCsv, YearsDownSeriesAcross) {
    const auto table = table_in(read_series_csv, "year,A,B\n1990,1.234,\n1991,,2.000\n1992,0,1.5\n");
    ASSERT_EQ(table.series.size(), 2U);
    EXPECT_EQ(table.series[0], series("A", 1990, {1.234, gap, 0.0}));
    EXPECT_EQ(table.series[1], series("B", 1991, {2.0, 1.5}));
    EXPECT_EQ(written(write_series_csv, table).text, "year,A,B\n1990,1.234,\n1991,,2.000\n1992,0.000,1.500\n");
}

TEST(SeriesCsv, TwoDecimalsStayTwo) {
    const std::string text = "year,A\n1990,1.20\n1991,9.99\n";
    EXPECT_EQ(written(write_series_csv, table_in(read_series_csv, text)).text, text);
}

TEST(SeriesCsv, UndatedSeriesHaveRingsFromTheBark) {
    WidthTable table;
    table.series = {series("A", 1, {3.0, 2.0, 1.0}), series("B", 1, {0.5})};
    table.series[0].dated = table.series[1].dated = false;
    const std::string text = "ring,A,B\n1,1.000,0.500\n2,2.000,\n3,3.000,\n";
    EXPECT_EQ(written(write_series_csv, table).text, text);
    EXPECT_EQ(table_in(read_series_csv, text).series, table.series);
}

TEST(SeriesCsv, DatedAndUndatedSeriesMayStandInOneTable) {
    WidthTable table;
    table.series = {series("A", 1990, {1.0, 2.0}), series("B", 1, {0.5, gap})};
    table.series[1].dated = false;
    const std::string text = "year,ring,A,B\n1990,,1.000,\n1991,,2.000,\n,1,,\n,2,,0.500\n";
    EXPECT_EQ(written(write_series_csv, table).text, text);
    EXPECT_EQ(table_in(read_series_csv, text).series, table.series);
}

TEST(SeriesCsv, ASeriesMayBeCalledRing) {
    WidthTable table;
    table.series = {series("ring", 1990, {1.0})};
    EXPECT_EQ(table_in(read_series_csv, written(write_series_csv, table).text).series, table.series);
}

TEST(SeriesCsv, NamesAreQuotedWhereTheyMustBe) {
    WidthTable table;
    table.series = {series("a, \"b\"", 1990, {1.0}), series("c;d;;;", 1990, {1.0})};
    const auto out = written(write_series_csv, table);
    EXPECT_EQ(out.text.substr(0, out.text.find('\n')), R"(year,"a, ""b""","c;d;;;")");
    EXPECT_EQ(table_in(read_series_csv, out.text).series, table.series);
}

TEST(SeriesCsv, SpreadsheetsOfOtherCountriesAreRead) {
    const WidthSeries expected = series("A", 1990, {1.234, 2.0});
    for (const std::string text :
         {"year;A\r\n1990;1,234\r\n1991;2\r\n", "\xEF\xBB\xBFYear\tA\n1990\t1,234\n1991\t2,000\n",
          "sep=;\nyear;A;\n1990;1.234;\n1991;2;\n;;\n", "year,A\n1991,2\n1990,1.234\n"}) {
        const auto table = table_in(read_series_csv, text);
        ASSERT_EQ(table.series.size(), 1U) << text;
        EXPECT_EQ(table.series[0], expected) << text;
    }
}

TEST(SeriesCsv, BadInputIsRefusedWithLineAndColumn) {
    const std::pair<const char*, const char*> all[] = {
        {"", "the file is empty"},
        {"A,B\n1,2\n", "line 1, column 1: the first column must be called year or ring"},
        {"year\n1990\n", "line 1, column 1: the header row names no series"},
        {"year,A,,B\n1990,1,,2\n", "line 1, column 8: this column has no name"},
        {"year,A\n1990,x\n", "line 2, column 6: 'x' is no width"},
        {"year,A\n1990,-1\n", "line 2, column 6: '-1' is no width"},
        {"year,A\n1990,nan\n", "line 2, column 6"},
        {"year,A\n1990,\"1,234\"\n", "line 2, column 6: '1,234' is no width"},
        {"year,A\n19.5,1\n", "line 2, column 1: '19.5' is no year"},
        {"year,A\n999999,1\n", "line 2, column 1: '999999' is no year"},
        {"ring,A\n0,1\n", "line 2, column 1: '0' is no ring number"},
        {"year,A\n,1\n", "line 2, column 1: the year is missing"},
        {"year,A\n1990,1\n1990,2\n", "line 3, column 1: 1990 is there twice"},
        {"year,A\n1990,1,2\n", "line 2, column 8: there is no series above"},
        {"year,A\n\"19\"90,1\n", "line 2, column 5: a quotation mark"},
        {"year,\"A\n1990,1\n", "line 1, column 6: a quoted field has no end"},
        {"year,A\n1990,\n", "no width in this file"},
        {"year,ring,A\n1990,,1\n,1,2\n", "series A: it has widths for years and for rings"},
    };
    for (const auto& [text, words] : all) {
        EXPECT_TRUE(contains(refusal(read_series_csv, text), words))
            << refusal(read_series_csv, text) << " for " << text;
    }
}

TEST(SeriesCsv, LinesAreCountedThroughQuotedLineEnds) {
    EXPECT_TRUE(contains(refusal(read_series_csv, "year,\"A\nB\",C\n\n1990,1,2\n1991,1,x\n"), "line 5, column 8"));
}

TEST(SeriesCsv, EqualNamesAreToldApart) {
    const auto table = table_in(read_series_csv, "year,A,A\n1990,1,2\n");
    EXPECT_EQ(table.series[1].id, "A_2");
    EXPECT_TRUE(mentions(table.remarks, "series A is called A_2"));
}

} // namespace
} // namespace pithward
