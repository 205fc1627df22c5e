#include "libcore/formats/text_input.h"

#include <gtest/gtest.h>

#include <sstream>

namespace pithward::formats {
namespace {

TEST(TextInput, ByteOrderMarksAreDroppedAndSizesBounded) {
    std::istringstream marked("\xEF\xBB\xBFyear");
    EXPECT_EQ(read_text(marked).value_or(""), "year");
    std::istringstream joined("\xEF\xBB\xBF"
                              "a\n\xEF\xBB\xBF"
                              "b\xEF\xEF\xBB\xBF\xBB\xBF");
    EXPECT_EQ(read_text(joined).value_or(""), "a\nb");
    std::istringstream large(std::string((1 << 20) + 1, 'x'));
    EXPECT_FALSE(read_text(large, 1 << 20).has_value());
}

TEST(TextInput, LinesEndInFourWays) {
    const auto lines = split_lines("a\nb\r\nc\rd\r\r\ne").value();
    ASSERT_EQ(lines.size(), 5U);
    EXPECT_EQ(lines[3].text, "d");
    EXPECT_EQ(lines[4].number, 5U);
    EXPECT_TRUE(split_lines("").value().empty());
}

TEST(TextInput, NumbersAreWholeOrNone) {
    EXPECT_EQ(whole_number("-12"), -12);
    for (const char* text : {"", "-", "+1", "1 ", "1.0", "0x1", "99999999999"}) {
        EXPECT_FALSE(whole_number(text)) << text;
    }
    EXPECT_EQ(decimal_number("1.5"), 1.5);
    EXPECT_EQ(decimal_number("1,5", true), 1.5);
    for (const char* text : {"", "1,5", "1.5mm", "inf", "nan", "1e999", " 1"}) {
        EXPECT_FALSE(decimal_number(text)) << text;
    }
    EXPECT_FALSE(decimal_number("1.234,5", true));
}

TEST(TextInput, ColumnsCountCharacters) {
    EXPECT_EQ(columns("H\xC3\xB6he"), 4U);
    EXPECT_EQ(columns("H\xF6he"), 4U);
    EXPECT_EQ(columns("\xF0\x9F\x8C\xB2"), 1U);
    EXPECT_EQ(columns("\xC0\xAF\xED\xA0\x80\xE2\x82"), 7U); // Overlong, a surrogate, cut short.
    EXPECT_EQ(column_offset("H\xC3\xB6he", 2), 3U);
    EXPECT_EQ(column_offset("abc", 9), 3U);
}

TEST(TextInput, OtherBytesBecomeUtf8AsLatin1) {
    EXPECT_EQ(as_utf8("H\xF6he"), "H\xC3\xB6he");
    EXPECT_EQ(as_utf8("H\xC3\xB6he"), "H\xC3\xB6he");
}

} // namespace
} // namespace pithward::formats
