#include "demo-scans/maker/ink.h"

#include <gtest/gtest.h>

namespace pithward::demo {
namespace {

TEST(Lettering, EveryLetterKeepsToItsLine) {
    for (const char letter : std::string_view("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-")) {
        const auto lines = lettering(std::string_view(&letter, 1), {100.0, 50.0}, 60.0, 0.0, 3);
        EXPECT_FALSE(lines.empty()) << letter;
        for (const auto& line : lines) {
            EXPECT_GE(line.size(), 2U) << letter;
            for (const ImagePoint& p : line) {
                EXPECT_GT(p.y, 40.0) << letter;
                EXPECT_LT(p.y, 120.0) << letter;
                EXPECT_GT(p.x, 90.0) << letter;
                EXPECT_LT(p.x, 165.0) << letter;
            }
        }
    }
}

TEST(Lettering, ASpaceWritesNothing) {
    EXPECT_TRUE(lettering(" ", {0.0, 0.0}, 60.0, 0.0, 3).empty());
}

} // namespace
} // namespace pithward::demo
