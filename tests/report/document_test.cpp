#include "app/report/paper/document.h"

#include <gtest/gtest.h>

namespace pithward::report {
namespace {

TEST(Document, HeadingsTablesAndFiguresAreNumberedInTheirOrder) {
    Document document;
    document.blocks = {Heading{1, "A"}, Table{"t", {}, {}}, Heading{2, "B"},    Figure{"f", "", "", ""},
                       Heading{2, "C"}, Heading{1, "D"},    Table{"u", {}, {}}, Heading{2, "E"}};
    const Document done = finished(document);
    EXPECT_EQ(std::get<Heading>(done.blocks[0]).number, "1");
    EXPECT_EQ(std::get<Heading>(done.blocks[4]).number, "1.2");
    EXPECT_EQ(std::get<Heading>(done.blocks[5]).number, "2");
    EXPECT_EQ(std::get<Heading>(done.blocks[7]).number, "2.1");
    EXPECT_EQ(std::get<Table>(done.blocks[6]).number, 2);
    EXPECT_EQ(std::get<Figure>(done.blocks[3]).number, 1);
}

TEST(Document, TextsAreMadeFitToBeShown) {
    EXPECT_EQ(fit_text("plain, \xC3\xA4 \xD7\x90\xD7\x91", 100), "plain, \xC3\xA4 \xD7\x90\xD7\x91");
    EXPECT_EQ(fit_text("a\nb\tc", 100), "a b c");
    EXPECT_EQ(fit_text(std::string("a\0b\x1b[31m", 8), 100), "ab[31m") << "control characters";
    EXPECT_EQ(fit_text("a\xE2\x80\xAE"
                       "b",
                       100),
              "ab")
        << "what turns the direction of all that follows";
    EXPECT_EQ(fit_text("a\xFF", 100), "a\xEF\xBF\xBD") << "what is no UTF-8";
    EXPECT_EQ(fit_text("abcdef", 4), "abc\xE2\x80\xA6");
    EXPECT_EQ(fit_text(std::string(1'000'000, 'x'), 10), std::string(9, 'x') + "\xE2\x80\xA6");
    EXPECT_EQ(fit_text("ab\xF0\x9F\x8C\xB2z", 4), "ab\xE2\x80\xA6") << "no half of a character";
}

TEST(Document, EachRowHasACellForEachColumn) {
    Document document;
    document.blocks = {Table{"t", {{"a"}, {"b"}}, {{"1"}, {"1", "2", "3"}}}};
    const Document done = finished(document);
    const auto& table = std::get<Table>(done.blocks[0]);
    EXPECT_EQ(table.rows[0], (std::vector<std::string>{"1", ""}));
    EXPECT_EQ(table.rows[1], (std::vector<std::string>{"1", "2"}));
}

TEST(Document, ContentsLeaveOutWhatWouldFillPages) {
    Document document;
    document.blocks.assign(10, Heading{2, "core"});
    EXPECT_EQ(contents_level(document), 2);
    document.blocks.assign(500, Heading{2, "core"});
    EXPECT_EQ(contents_level(document), 1);
    document.contents = false;
    EXPECT_EQ(contents_level(document), 0);
}

} // namespace
} // namespace pithward::report
