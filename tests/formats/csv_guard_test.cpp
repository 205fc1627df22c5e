#include "libcore/formats/csv_guard.h"
#include "libcore/formats/csv_rows.h"
#include "libcore/formats/field_sheet.h"
#include "libcore/formats/series_csv.h"
#include "tests/formats/series_support.h"

#include <random>

namespace pithward {
namespace {

using namespace formats;

TEST(CsvGuard, WhatASpreadsheetWouldRunIsWrittenAsText) {
    for (const std::string text :
         {"=1+2", "+cmd", "-x", "@SUM(A1)", "\t=1", "\r=1", "=HYPERLINK(\"http://x\",\"y\")"}) {
        EXPECT_EQ(guarded(text), "'" + text);
        EXPECT_EQ(unguarded(guarded(text)), text);
    }
}

TEST(CsvGuard, NumbersAndOtherTextsStayAsTheyAre) {
    for (const std::string text : {"", "-31.25", "-1e-05", "-0", "0", "a=b", "'tis", "'", "H01A", " =x"}) {
        EXPECT_EQ(guarded(text), text);
        EXPECT_EQ(unguarded(text), text);
    }
    EXPECT_EQ(csv_field("-7.25"), "-7.25");
}

TEST(CsvGuard, EveryTextComesBack) {
    std::mt19937 random(7);
    const std::string letters = "'=+-@\t\r1.5ax \",;";
    for (int n = 0; n < 20'000; ++n) {
        std::string text;
        for (std::size_t k = random() % 6; k > 0; --k) {
            text += letters[random() % letters.size()];
        }
        const std::string cell = guarded(text);
        EXPECT_EQ(unguarded(cell), text) << "[" << text << "]";
        std::vector<std::string> read;
        const auto done = read_csv_rows("x," + csv_field(text) + "\n", {}, [&](const CsvRow& row) -> Outcome<void> {
            read.push_back(row.at(1).text);
            return {};
        });
        ASSERT_TRUE(done.has_value()) << "[" << text << "]";
        EXPECT_EQ(read, std::vector{text});
    }
}

TEST(CsvGuard, AFieldSheetRunsNothingAndReadsBack) {
    Site site;
    site.id = "=1+1";
    site.longitude = -7.25;
    Tree tree;
    tree.id = "-T";
    Core core;
    core.id = "@core";
    core.notes = "=HYPERLINK(\"http://x\")";
    core.collector = "-12";
    core.others = {{"+extra", "'=y"}};
    tree.cores = {core};
    site.trees = {tree};
    std::ostringstream out;
    ASSERT_TRUE(write_field_sheet(out, {site}).has_value());
    EXPECT_NE(out.str().find("'=1+1,'-T,'@core,"), std::string::npos) << out.str();
    EXPECT_NE(out.str().find(",-7.25,"), std::string::npos) << "a number is never altered";
    EXPECT_NE(out.str().find(",-12,"), std::string::npos);
    std::istringstream in(out.str());
    EXPECT_EQ(read_field_sheet(in).value(), std::vector{site});
}

TEST(CsvGuard, ASeriesNamedLikeAFormulaReadsBack) {
    WidthTable table;
    table.series = {test::series("=A1", 1990, {1.0, 0.5})};
    std::ostringstream out;
    ASSERT_TRUE(write_series_csv(out, table).has_value());
    EXPECT_TRUE(out.str().starts_with("year,'=A1\n1990,1.000\n")) << out.str();
    std::istringstream in(out.str());
    EXPECT_EQ(read_series_csv(in)->series.at(0).id, "=A1");
}

TEST(CsvHeaders, LinesBeforeTheTableAreItsHeaders) {
    std::ostringstream out;
    const std::vector<std::string> headers{"Boundaries: 12, of which \"8\" looked at", "two\nlines"};
    write_csv_headers(out, headers);
    out << "year;A\n1990;1,5\n";
    std::istringstream in(out.str());
    const auto table = read_series_csv(in);
    ASSERT_TRUE(table.has_value()) << table.error().line() << out.str();
    EXPECT_EQ(table->headers, (std::vector<std::string>{headers[0], "two lines"}));
    EXPECT_EQ(table->series.at(0).widths.at(0), Millimetres(1.5)) << "the headers tell nothing of the separator";
}

} // namespace
} // namespace pithward
