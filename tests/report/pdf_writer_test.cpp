#include "app/report/paper/html_writer.h"
#include "app/report/paper/pdf_writer.h"
#include "tests/report/text_of.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace pithward::report {
namespace {

/// A document with a table over several pages.
Document long_document() {
    Document document{"A long one", "with a table", {"made here"}, {}};
    document.blocks = {Heading{1, "First"}, Paragraph{"Some words before it."}};
    Table table{"Many rows", {{"name"}, {"measured value", 1.0, true}}, {}, "The note."};
    for (int k = 0; k < 200; ++k) {
        table.rows.push_back({"row" + std::to_string(k), std::to_string(1000 + k) + ".5"});
    }
    document.blocks.push_back(table);
    document.blocks.push_back(Heading{1, "Last"});
    document.blocks.push_back(Bullets{{"one thing", "another"}});
    return finished(document);
}

TEST(PdfWriter, PagesHaveNumbersAndTablesGoOnUnderTheirTitles) {
    const auto pdf = pdf_bytes_of(long_document());
    ASSERT_TRUE(pdf);
    EXPECT_TRUE(pdf->starts_with("%PDF-"));
    const auto text = test::text_of_pdf(*pdf);
    if (!text) {
        GTEST_SKIP() << "pdftotext is not on this machine";
    }
    const auto pages = std::ranges::count(*text, '\f');
    EXPECT_GE(pages, 4);
    for (int page = 1; page <= pages; ++page) {
        EXPECT_NE(text->find("page " + std::to_string(page) + " of " + std::to_string(pages)), std::string::npos);
    }
    std::size_t titles = 0;
    for (std::size_t at = text->find("measured value"); at != std::string::npos;
         at = text->find("measured value", at + 1)) {
        ++titles;
    }
    EXPECT_GE(titles, static_cast<std::size_t>(pages) - 1);
    EXPECT_NE(text->find("Table 1, continued"), std::string::npos);
}

TEST(PdfWriter, SaysAllThatTheHtmlSays) {
    const Document document = long_document();
    const auto pdf = pdf_bytes_of(document);
    ASSERT_TRUE(pdf);
    const auto text = test::text_of_pdf(*pdf);
    if (!text) {
        GTEST_SKIP() << "pdftotext is not on this machine";
    }
    const std::string in_pdf = test::without_blanks(*text);
    const std::string in_html = test::without_blanks(test::text_of_html(html_bytes(document)));
    for (int k = 0; k < 200; ++k) {
        const std::string row = "row" + std::to_string(k) + std::to_string(1000 + k) + ".5";
        EXPECT_NE(in_pdf.find(row), std::string::npos) << row;
        EXPECT_NE(in_html.find(row), std::string::npos) << row;
    }
    for (const char* words : {"Somewordsbeforeit.", "Thenote.", "onething", "another", "2Last", "Table1.Manyrows"}) {
        EXPECT_NE(in_pdf.find(words), std::string::npos) << words;
        EXPECT_NE(in_html.find(words), std::string::npos) << words;
    }
}

TEST(PdfWriter, HostileTablesEndToo) {
    Document document{"t", "", {}, {}};
    Table wide{"No column is broad enough", {}, {}};
    for (int k = 0; k < 60; ++k) {
        wide.columns.push_back({"averylongtitleofonewordonly", 1.0, k % 2 == 0});
    }
    wide.rows.push_back(std::vector<std::string>(60, std::string(5000, 'x')));
    document.blocks = {wide,
                       Table{"empty", {}, {}},
                       Table{"no rows", {{"a"}}, {}},
                       Figure{"broken", "", "image/jpeg", "no picture"},
                       Figure{"broken too", "", "image/svg+xml", "<svg"},
                       Paragraph{""}};
    EXPECT_TRUE(pdf_bytes_of(finished(document)));
    EXPECT_TRUE(pdf_bytes_of(finished(Document{})));
}

} // namespace
} // namespace pithward::report
