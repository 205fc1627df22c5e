#include "libcore/formats/archive_template.h"
#include "tests/formats/series_support.h"

namespace pithward {
namespace {

using namespace test;

const std::string outline = "# a title\n"
                            "## age_CE\tage,,,year Common Era,,tree ring,,,N,\n"
                            "## A_1_raw\ttotal ring width,,,millimeter,,tree ring,,,N,Tree ID: A 1; and more\n"
                            "## B_raw total ring width ,,,length unit>millimeter,,tree ring,,,N,Tree ID: B;\n"
                            "# Missing_Values: NA\n";

TEST(ArchiveTemplate, TheTableIsReadWithTheTreesIdentifiers) {
    const auto table = table_in(read_archive_template, outline + "age_CE\tA 1_raw\tB_raw\t\r\n"
                                                                 "-1\tNA\t1.5\t\r\n0\t1.234\tNA\r\n1\t0\t2.5\t\r\n");
    ASSERT_EQ(table.series.size(), 2U);
    EXPECT_EQ(table.series[0], series("A 1", 0, {1.234, 0.0}));
    EXPECT_EQ(table.series[1], series("B", -1, {1.5, gap, 2.5}, WidthSeries::Unit::HundredthMm));
}

TEST(ArchiveTemplate, MissingValuesOfAllKindsAreGaps) {
    const auto table = table_in(read_archive_template, "# Missing_Values: NaN, -9999\nage_CE\tA_raw\n1990\t1.0\n"
                                                       "1991\tNaN\n1992\t-9999\n1993\t\n1994\t-5\n1995\t1.0\n");
    EXPECT_EQ(widths(table.series[0]), (std::vector{1.0, gap, gap, gap, gap, 1.0}));
    EXPECT_EQ(table.remarks, (std::vector<std::string>{"line 7: a negative number is read as a gap"}));
}

TEST(ArchiveTemplate, OtherUnitsAreConvertedOrRefused) {
    const std::string rest = "age_CE\tA_raw\n1990\t1234\n";
    EXPECT_EQ(widths(table_in(read_archive_template, "## A_raw\ttotal ring width,,,micrometer\n" + rest).series[0]),
              (std::vector{1.234}));
    EXPECT_TRUE(contains(refusal(read_archive_template, "## A_raw\ttotal ring width,,,furlong\n" + rest),
                         "line 1: widths in 'furlong' can't be read"));
}

TEST(ArchiveTemplate, ColumnsThatAreNoWidthsAreLeftOut) {
    const auto table =
        table_in(read_archive_template, "## depth\tsample depth,,,count\nage_CE\tA_raw\tdepth\n1990\t1.5\t-3\n");
    EXPECT_EQ(table.series.size(), 1U);
    EXPECT_TRUE(mentions(table.remarks, "column depth holds no ring widths"));
}

TEST(ArchiveTemplate, RawStepsInPlaceOfMillimetresAreWarnedOf) {
    const auto table = table_in(read_archive_template, outline + "age_CE\tA_raw\n1990\t162\n1991\t155\n1992\t12\n");
    EXPECT_TRUE(mentions(table.remarks, "over 30 mm"));
}

TEST(ArchiveTemplate, WhatIsWrittenIsReadBack) {
    WidthTable table;
    table.headers = {"XYZ    1 A place  ", "", "XYZ    3 people: and more"};
    table.series = {series("A 1", 1990, {1.234, gap, 0.0}), series("A_1", 1991, {2.5}), series("a;b", 1991, {2.5})};
    const auto out = written(write_archive_template, table);
    const auto back = table_in(read_archive_template, out.text);
    EXPECT_EQ(back.headers, table.headers);
    ASSERT_EQ(back.series.size(), 3U);
    EXPECT_EQ(back.series[0], table.series[0]);
    EXPECT_EQ(back.series[1], table.series[1]);
    EXPECT_EQ(back.series[2].id, "a_b"); // A semicolon ends the identifier in a ## line.
    EXPECT_TRUE(contains(out.text, "# Template Version 4.0\n"));
    EXPECT_TRUE(mentions(out.remarks, "metadata are left empty"));
}

TEST(ArchiveTemplate, NamesThatDifferInAnUnderscoreAreToldApart) {
    WidthTable table;
    table.series = {series("_B", 1990, {1.0}), series("B", 1990, {2.0})};
    EXPECT_EQ(table_in(read_archive_template, written(write_archive_template, table).text).series, table.series);
}

TEST(ArchiveTemplate, UndatedSeriesAreRefused) {
    WidthTable table;
    table.series = {series("A", 1, {1.0})};
    table.series[0].dated = false;
    EXPECT_TRUE(contains(refusal(write_archive_template, table), "series A: it is undated"));
}

TEST(ArchiveTemplate, BadInputIsRefusedWithLineAndColumn) {
    const std::pair<const char*, const char*> all[] = {
        {"", "there is no table"},
        {"# only words\n", "there is no table"},
        {"A       1990   100   999\n", "line 1, column 1: the table does not begin with a column age_CE"},
        {"age_CE\n1990\n", "line 1: the table has no series"},
        {"age_CE\tA\n1990\tx\n", "line 2, column 6: 'x' is no width"},
        {"age_CE\tA\nabout\t1\n", "line 2, column 1: 'about' is no year"},
        {"age_CE\tA\n1990\t1\n1990\t1\n", "line 3, column 1: this year is there twice"},
        {"age_CE\tA\n1990\t1\t2\n", "line 2, column 8: there is no series above"},
        {"age_CE\tA\n1990\tNA\n", "there is no width"},
    };
    for (const auto& [text, words] : all) {
        EXPECT_TRUE(contains(refusal(read_archive_template, text), words)) << refusal(read_archive_template, text);
    }
}

} // namespace
} // namespace pithward
