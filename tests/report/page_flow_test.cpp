#include "app/report/paper/page_flow.h"

#include <gtest/gtest.h>

namespace pithward::report {
namespace {

PagePiece piece(double height, bool keep_next = false, double before = 0.0) {
    PagePiece one;
    one.height = height;
    one.keep_next = keep_next;
    one.before = before;
    return one;
}

TEST(PageFlow, PiecesFillPagesAndGapsFallAwayAtTheTop) {
    const std::vector<PagePiece> pieces{piece(60, false, 5), piece(30, false, 5), piece(20, false, 5)};
    const LaidPages laid = lay_out(pieces, 100);
    ASSERT_EQ(laid.pages.size(), 2U);
    EXPECT_DOUBLE_EQ(laid.pages[0][0].top, 0.0);
    EXPECT_DOUBLE_EQ(laid.pages[0][1].top, 65.0);
    EXPECT_DOUBLE_EQ(laid.pages[1][0].top, 0.0);
}

TEST(PageFlow, AHeadingGoesWithWhatFollowsIt) {
    std::vector<PagePiece> pieces{piece(70), piece(10, true), piece(10, true), piece(30)};
    pieces[1].heading = 0;
    const LaidPages laid = lay_out(pieces, 100);
    ASSERT_EQ(laid.pages.size(), 2U);
    EXPECT_EQ(laid.pages[0].size(), 1U);
    EXPECT_EQ(laid.pages[1].front().piece, &pieces[1]);
    EXPECT_EQ(laid.heading_pages, std::vector<int>{2});
}

TEST(PageFlow, ATableGoesOnUnderItsTitles) {
    const auto titles = std::make_shared<PagePiece>(piece(15));
    std::vector<PagePiece> pieces{piece(10, true), piece(15, true)};
    for (int k = 0; k < 30; ++k) {
        pieces.push_back(piece(10));
        pieces.back().again = titles;
    }
    const LaidPages laid = lay_out(pieces, 100);
    ASSERT_GT(laid.pages.size(), 3U);
    for (std::size_t k = 1; k < laid.pages.size(); ++k) {
        EXPECT_EQ(laid.pages[k].front().piece, titles.get());
        EXPECT_DOUBLE_EQ(laid.pages[k][1].top, 15.0);
        EXPECT_LE(laid.pages[k].back().top + 10.0, 100.0);
    }
}

TEST(PageFlow, WhatIsHigherThanAPageIsStillShown) {
    const std::vector<PagePiece> pieces{piece(10), piece(10, true), piece(300), piece(10)};
    const LaidPages laid = lay_out(pieces, 100);
    std::size_t shown = 0;
    for (const auto& page : laid.pages) {
        shown += page.size();
    }
    EXPECT_EQ(shown, pieces.size());
}

} // namespace
} // namespace pithward::report
