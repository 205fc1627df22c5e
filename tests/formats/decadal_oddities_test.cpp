// Files that depart from the rules: what is clear is read and said, what is not is refused with line and column.
#include "libcore/formats/decadal.h"
#include "tests/formats/series_support.h"

namespace pithward {
namespace {

using namespace test;
using Unit = WidthSeries::Unit;

const std::string decade = "   102   103   104   105   106   107   108   109   110   111\n";

TEST(DecadalOddities, ASeriesThatGoesOnAfterItsEndMarkHasAGap) {
    const auto table = table_in(read_decadal, "A       1990   100   999\n"
                                              "B       1990    50   999\n"
                                              "A       1994   200   999\n");
    ASSERT_EQ(table.series.size(), 2U);
    EXPECT_EQ(widths(table.series[0]), (std::vector{1.0, gap, gap, gap, 2.0}));
    EXPECT_TRUE(mentions(table.remarks, "line 3: series A goes on after an end mark"));
}

TEST(DecadalOddities, AnEarlierPartMayFollowALaterOne) {
    const auto table = table_in(read_decadal, "A       1994   200   999\n"
                                              "A       1990   100 -9999\n");
    EXPECT_EQ(widths(table.series[0]), (std::vector{0.1, gap, gap, gap, 2.0}));
    EXPECT_TRUE(mentions(table.remarks, "differ in unit"));
}

TEST(DecadalOddities, ARepeatedIdentifierForTheSameYearsGetsANameOfItsOwn) {
    const auto table = table_in(read_decadal, "ABCDEFGH1990   100   999\n"
                                              "ABCDEFGH1990   200   999\n");
    ASSERT_EQ(table.series.size(), 2U);
    EXPECT_EQ(table.series[0].id, "ABCDEFGH");
    EXPECT_EQ(table.series[1].id, "ABCDEF_2");
    EXPECT_TRUE(mentions(table.remarks, "line 2: series ABCDEFGH is there twice"));
}

TEST(DecadalOddities, AMissingEndMarkTakesTheUnitOfAllOthers) {
    const auto table = table_in(read_decadal, "A       1990   100 -9999\n"
                                              "B       1990   200   300\n"
                                              "C       1990   200 -9999\n"
                                              "D       1990   400\n");
    ASSERT_EQ(table.series.size(), 4U);
    EXPECT_EQ(widths(table.series[1]), (std::vector{0.2, 0.3}));
    EXPECT_EQ(widths(table.series[3]), (std::vector{0.4}));
    EXPECT_TRUE(mentions(table.remarks, "line 4: series D has no end mark"));
}

TEST(DecadalOddities, AMissingEndMarkAmongMixedUnitsIsRefused) {
    EXPECT_TRUE(contains(refusal(read_decadal, "A       1990   100 -9999\n"
                                               "B       1990   200   999\n"
                                               "C       1990   300\n"),
                         "line 3: series C has no end mark"));
    EXPECT_TRUE(contains(refusal(read_decadal, "A       1990   100   200\n"), "line 1: series A has no end mark"));
}

TEST(DecadalOddities, AnEndMarkAfterTheTenthValueCounts) {
    const auto table = table_in(read_decadal, "A       1990" + decade.substr(0, 60) + " -9999\n");
    EXPECT_EQ(table.series[0].widths.size(), 10U);
    EXPECT_EQ(table.series[0].unit, Unit::ThousandthMm);
    EXPECT_TRUE(table.series[0].comments.empty());
    EXPECT_TRUE(mentions(table.remarks, "after the tenth value"));
}

TEST(DecadalOddities, ANumberAfterTheTenthValueIsSaid) {
    const std::string line =
        "A       1990" + std::string("   100   100   100   100   100   100   100   100   100   100");
    for (const char* comment : {"   100", " 7 of spring"}) {
        const auto table = table_in(read_decadal, line + comment + "\nA       2000   999\n");
        EXPECT_EQ(table.series.at(0).widths.size(), 10U);
        EXPECT_TRUE(mentions(table.remarks, "line 1: a number after the tenth value")) << comment;
    }
    for (const char* comment : {"", " checked", " 2nd reading"}) {
        EXPECT_TRUE(table_in(read_decadal, line + comment + "\nA       2000   999\n").remarks.empty()) << comment;
    }
}

TEST(DecadalOddities, TabsAreReadAsSpaces) {
    const auto table = table_in(read_decadal, "TOU 2A\t1998\t123\t124\n"
                                              "TOU 2A\t2000\t125\t-9999\n");
    EXPECT_EQ(table.series[0], series("TOU 2A", 1998, {0.123, 0.124, 0.125}));
    EXPECT_TRUE(mentions(table.remarks, "lines 1, 2: the columns don't hold"));
}

TEST(DecadalOddities, ShiftedColumnsAreReadBySpaces) {
    const auto table = table_in(read_decadal, "B1011  1834   570   700   550   500   710   810\n"
                                              "B1011  1840" +
                                                  decade + "B1011  1850   390 -9999\n");
    EXPECT_EQ(table.series[0].id, "B1011");
    EXPECT_EQ(table.series[0].first_year, Year(1834));
    EXPECT_EQ(table.series[0].widths.size(), 17U);
    const auto wide = table_in(read_decadal, "LONGNAME01  1838   570   700\n"
                                             "LONGNAME01  1840   390   999\n");
    EXPECT_EQ(wide.series[0], series("LONGNAME01", 1838, {5.7, 7.0, 3.9}, Unit::HundredthMm));
}

TEST(DecadalOddities, ValuesOutOfLineAreRead) {
    const auto table = table_in(read_decadal, "A       1990   175   152   93   172 -9999\n"
                                              "B       1990   47    89    62   000   28 -9999\n");
    EXPECT_EQ(widths(table.series[0]), (std::vector{0.175, 0.152, 0.093, 0.172}));
    EXPECT_EQ(widths(table.series[1]), (std::vector{0.047, 0.089, 0.062, 0.0, 0.028}));
    EXPECT_TRUE(mentions(table.remarks, "line 1: values don't end with their columns"));
    EXPECT_TRUE(mentions(table.remarks, "line 2: the columns don't hold"));
}

TEST(DecadalOddities, BlankColumnsBetweenValuesAreAGap) {
    const auto table = table_in(read_decadal, "A       1990   100         102   999\n");
    EXPECT_EQ(widths(table.series[0]), (std::vector{1.0, gap, 1.02}));
    EXPECT_TRUE(mentions(table.remarks, "line 1: blank columns between values"));
}

TEST(DecadalOddities, BlankColumnsBeforeTheFirstValueKeepItsPlace) {
    // The year of the decade, or the year of the first value with the columns standing for the decade's years.
    for (const std::string year : {"1990", "1997"}) {
        const auto table = table_in(read_decadal, "A       " + year + std::string(42, ' ') + "   100   101   102\n" +
                                                      "A       2000   103   999\n");
        EXPECT_EQ(table.series[0].first_year, Year(1997));
        EXPECT_EQ(table.series[0].widths.size(), 4U);
    }
    EXPECT_TRUE(contains(refusal(read_decadal, "A       1993" + std::string(12, ' ') + "   100   101   999\n"),
                         "line 1, column 13"));
}

TEST(DecadalOddities, IdentifiersThatDifferInCaseOnlyAreOneSeriesIfItGoesOn) {
    const auto table = table_in(read_decadal, "MV2-1c  1998   215   119\n"
                                              "MV2-1C  2000   318   999\n");
    ASSERT_EQ(table.series.size(), 1U);
    EXPECT_EQ(table.series[0].first_year, Year(1998));
    EXPECT_EQ(table_in(read_decadal, "a       1990   215   999\n"
                                     "A       1990   318   999\n")
                  .series.size(),
              2U);
}

TEST(DecadalOddities, AWholeDecadeWithoutALineIsAGap) {
    const auto table = table_in(read_decadal, "A       1980" + decade + "A       2000   120   999\n");
    EXPECT_EQ(table.series[0].widths.size(), 21U);
    EXPECT_TRUE(mentions(table.remarks, "no line for years 1990 to 1999"));
}

TEST(DecadalOddities, LinesOfTenYearsThatDontBeginWithTheDecadeAreRead) {
    const auto table =
        table_in(read_decadal, "A       1983" + decade + "A       1993" + decade + "A       2003   999\n");
    EXPECT_EQ(table.series[0].first_year, Year(1983));
    EXPECT_EQ(table.series[0].widths.size(), 20U);
    EXPECT_TRUE(mentions(table.remarks, "don't end with the decade"));
}

TEST(DecadalOddities, BlankLinesAndHeadersAmidTheFileAreNoMeasurements) {
    const auto table = table_in(read_decadal, "XYZ    1 A place\n"
                                              "A       1990   100   999\n"
                                              "\n"
                                              "XYZ    1 Another place\n"
                                              "B       1990   100   999\n"
                                              "   \n");
    EXPECT_EQ(table.series.size(), 2U);
    EXPECT_TRUE(mentions(table.remarks, "line 4: a header line amid"));
}

TEST(DecadalOddities, BytesThatAreNoUtf8CountAsOneColumn) {
    const auto table = table_in(read_decadal, "XYZ    1 H\xF6he\nH\xF6he 01 1990   100   999\n");
    EXPECT_EQ(table.headers[0], "XYZ    1 H\xF6he");
    EXPECT_EQ(table.series[0].id, "H\xF6he 01");
}

struct Broken {
    const char* text;
    const char* place;
};

TEST(DecadalOddities, BrokenColumnsAreRefusedWithLineAndColumn) {
    const Broken all[] = {
        {"A       1990   100   1x1   102   999\n", "line 1, column 19: '1x1' is no value"},
        {"A       19x0   100   101   102   999\n", "line 1, column 9: '19x0' is no year"},
        {"XYZ    1 A place\nA       1990   1.5   999\n", "line 2, column 13: '1.5' is no value"},
        {"A       1980   100   999\nA       1990\n", "line 2, column 13: there is no value"},
        {"XYZ    1 A place\n        1990   100   999\n", "line 2, column 1: there is no identifier"},
        {"A       1980   100   999\nB       1990   100   101 words\n", "line 2, column 25: 'words' is no value"},
        {"one\ntwo\nthree\nfour\nA       1990   100   999\n", "line 4, column 9: there is no year"},
        // A value too few or too many: it can't be told which years are wrong.
        {"A       1822   154   176   161\nA       1830   104   999\n",
         "line 2, column 9: series A goes on with year 1830"},
        {"A       1828   154   176   161\nA       1830   104   999\n",
         "line 2, column 9: series A goes on with year 1830"},
        {"A       1850   154\nA       1840   104   999\n", "line 2, column 9"},
        // An end mark in a line filled up with zeros.
        {"A       1990   154   999     0     0\nB       1990   100   999\n", "line 1: it is not clear where"},
    };
    for (const Broken& broken : all) {
        EXPECT_TRUE(contains(refusal(read_decadal, broken.text), broken.place))
            << refusal(read_decadal, broken.text) << "\nfor\n"
            << broken.text;
    }
}

TEST(DecadalOddities, WhatIsNoDecadalFileIsRefused) {
    EXPECT_TRUE(contains(refusal(read_decadal, ""), "no measurements"));
    EXPECT_TRUE(contains(refusal(read_decadal, "\n\n\n"), "no measurements"));
    EXPECT_TRUE(contains(refusal(read_decadal, std::string("\x89PNG\r\n\x1a\n\0\0\0\rIHDR", 16)), "not plain text"));
    EXPECT_TRUE(contains(refusal(read_decadal, "A       2000   999\n"), "no measurements"));
}

} // namespace
} // namespace pithward
