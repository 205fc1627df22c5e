#include "libcore/formats/identifiers.h"
#include "libcore/formats/text_input.h"

#include <gtest/gtest.h>

#include <random>
#include <set>

namespace pithward::formats {
namespace {

std::vector<std::string> fitted(const std::vector<std::string>& wanted, std::size_t longest = 8) {
    std::vector<IdentifierRoom> rooms;
    rooms.reserve(wanted.size());
    for (const std::string& one : wanted) {
        rooms.push_back({one, longest, true});
    }
    return fitting_identifiers(rooms);
}

using Names = std::vector<std::string>;

TEST(Identifiers, WhatFitsIsKept) {
    EXPECT_EQ(fitted({"A01", "TOU 22B", "12345678"}), (Names{"A01", "TOU 22B", "12345678"}));
}

TEST(Identifiers, SignsAreDroppedBeforeLetters) {
    EXPECT_EQ(fitted({"A-01-2024"}), (Names{"A012024"}));
    EXPECT_EQ(fitted({"SITE01TREE02"}), (Names{"SITREE02"}));
}

TEST(Identifiers, NumbersTellEqualOnesApart) {
    EXPECT_EQ(fitted({"A", "A", "A"}), (Names{"A", "A_2", "A_3"}));
    EXPECT_EQ(fitted({"ABCDEFGH", "ABCDEFGH", "ABCDEF_2"}), (Names{"ABCDEFGH", "ABCDEF_3", "ABCDEF_2"}));
}

TEST(Identifiers, AMinusInTheLastPlaceIsNotKept) {
    EXPECT_EQ(fitted({"ABCDEFG-", "ABC-"}), (Names{"ABCDEFG", "ABC-"}));
}

TEST(Identifiers, NoIdentifierIsEmptyOrHoldsControlCharacters) {
    EXPECT_EQ(fitted({"", "  ", "a\tb", "---------"}), (Names{"series", "series_2", "a_b", "series_3"}));
}

TEST(Identifiers, LettersOfOtherScriptsAreNeverCutInside) {
    const auto name = fitted({"\xC3\xB6\xC3\xB6\xC3\xB6\xC3\xB6\xC3\xB6\xC3\xB6\xC3\xB6\xC3\xB6\xC3\xB6"})[0];
    EXPECT_EQ(columns(name), 8U);
    EXPECT_EQ(as_utf8(name), name);
}

TEST(Identifiers, AllAreDifferentAndFitWhateverIsWanted) {
    const unsigned seed = std::random_device{}();
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937 random(seed);
    Names wanted;
    for (int i = 0; i < 3000; ++i) {
        std::string name;
        for (auto length = random() % 14; length > 0; --length) {
            name += "AB1- _"[random() % 6];
        }
        wanted.push_back(name);
    }
    const Names names = fitted(wanted);
    EXPECT_EQ(std::set<std::string>(names.begin(), names.end()).size(), wanted.size());
    for (const std::string& name : names) {
        EXPECT_TRUE(!name.empty() && columns(name) <= 8);
    }
}

} // namespace
} // namespace pithward::formats
