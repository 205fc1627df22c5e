#include "app/bench/tools/draw_path_tool.h"

#include <gtest/gtest.h>

namespace pithward::bench {
namespace {

using Key = Tool::Key;

TEST(DrawPathTool, ClicksAndFinishGiveThePath) {
    DrawPathTool tool;
    EXPECT_FALSE(tool.click({1, 2}).finished);
    EXPECT_FALSE(tool.click({5, 2}).finished);
    EXPECT_FALSE(tool.click({9, 3}).finished);
    const ToolAnswer answer = tool.key(Key::Finish);
    EXPECT_TRUE(answer.finished);
    EXPECT_EQ(answer.result, (DrawnPath{{{1, 2}, {5, 2}, {9, 3}}}));
}

TEST(DrawPathTool, ADoubleClickFinishesAtItsFirstClick) {
    DrawPathTool tool;
    tool.click({1, 2});
    tool.click({5, 2});
    EXPECT_EQ(tool.double_click({5, 2}).result, (DrawnPath{{{1, 2}, {5, 2}}}));
}

TEST(DrawPathTool, OnePointIsNoPath) {
    DrawPathTool tool;
    tool.click({1, 2});
    tool.click({1, 2});
    EXPECT_FALSE(tool.key(Key::Finish).finished);
    tool.click({3, 2});
    EXPECT_TRUE(tool.key(Key::Finish).finished);
}

TEST(DrawPathTool, EscapeInTheMiddleDrawsNothing) {
    DrawPathTool tool;
    tool.click({1, 2});
    tool.click({5, 2});
    tool.move({7, 2});
    const ToolAnswer answer = tool.key(Key::GiveUp);
    EXPECT_TRUE(answer.finished);
    EXPECT_FALSE(answer.result);
}

TEST(DrawPathTool, TakingBackRemovesPointsAndThenTheTool) {
    DrawPathTool tool;
    tool.click({1, 2});
    tool.click({5, 2});
    EXPECT_FALSE(tool.key(Key::TakeBack).finished);
    EXPECT_EQ(tool.preview().size(), 1U);
    EXPECT_FALSE(tool.key(Key::TakeBack).finished);
    EXPECT_TRUE(tool.preview().empty());
    EXPECT_TRUE(tool.key(Key::TakeBack).finished);
}

TEST(DrawPathTool, ReversedItIsDrawnFromThePith) {
    DrawPathTool tool;
    EXPECT_EQ(tool.first_word(), "bark");
    tool.key(Key::Reverse);
    EXPECT_EQ(tool.first_word(), "to pith");
    tool.click({9, 2});
    tool.click({1, 2});
    EXPECT_EQ(tool.key(Key::Finish).result, (DrawnPath{{{1, 2}, {9, 2}}}));
}

TEST(DrawPathTool, ThePreviewFollowsTheCursor) {
    DrawPathTool tool;
    tool.move({4, 4});
    EXPECT_TRUE(tool.preview().empty());
    tool.click({1, 2});
    tool.move({6, 6});
    EXPECT_EQ(tool.preview(), (std::vector<ImagePoint>{{1, 2}, {6, 6}}));
}

} // namespace
} // namespace pithward::bench
