#include "app/bench/model/piece_shelf.h"

#include <gtest/gtest.h>

namespace pithward::bench {
namespace {

/// 3 x 100 x 4 bytes.
LanePiece piece_of(float value) {
    LanePiece piece;
    for (cv::Mat1f& channel : piece) {
        channel = cv::Mat1f(10, 10, value);
    }
    return piece;
}

TEST(PieceShelf, GivesBackWhatItKeeps) {
    PieceShelf shelf;
    EXPECT_FALSE(shelf.find({1, 2}).has_value());
    shelf.keep({1, 2}, piece_of(0.5F));
    const auto found = shelf.find({1, 2});
    ASSERT_TRUE(found.has_value());
    EXPECT_FLOAT_EQ((*found)[2](9, 9), 0.5F);
    EXPECT_FALSE(shelf.find({2, 1}).has_value());
    EXPECT_EQ(shelf.bytes(), 1200U);
}

TEST(PieceShelf, CountsAPieceThatIsKeptTwiceOnce) {
    PieceShelf shelf;
    shelf.keep({1, 1}, piece_of(0.1F));
    shelf.keep({1, 1}, piece_of(0.1F));
    EXPECT_EQ(shelf.bytes(), 1200U);
}

TEST(PieceShelf, LetsTheLongestUnusedGo) {
    PieceShelf shelf(2500);
    shelf.keep({1, 0}, piece_of(0.1F));
    shelf.keep({2, 0}, piece_of(0.2F));
    EXPECT_TRUE(shelf.find({1, 0}).has_value());
    shelf.keep({3, 0}, piece_of(0.3F));
    EXPECT_FALSE(shelf.find({2, 0}).has_value());
    EXPECT_TRUE(shelf.find({1, 0}).has_value());
    EXPECT_TRUE(shelf.find({3, 0}).has_value());
    EXPECT_LE(shelf.bytes(), 2500U);
}

} // namespace
} // namespace pithward::bench
