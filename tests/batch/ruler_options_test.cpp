#include "tests/batch/task_from.h"

#include <gtest/gtest.h>

namespace pithward::batch {
namespace {

TEST(RulerOptions, ALineOrTwo) {
    const auto one = task_from({"--ruler", "10,20 300.5,21", "scan.png"});
    ASSERT_TRUE(one.has_value()) << one.error().line();
    ASSERT_EQ(one->ruler.lines.size(), 1U);
    EXPECT_EQ(one->ruler.lines[0], (RulerLine{{10.0, 20.0}, {300.5, 21.0}}));
    EXPECT_FALSE(one->ruler.graduation.has_value());
    const auto two = task_from({"--ruler", "1,2 300,2", "--ruler", "5,5 5,400", "--graduation", "1/16in", "scan.png"});
    ASSERT_TRUE(two.has_value()) << two.error().line();
    EXPECT_EQ(two->ruler.lines.size(), 2U);
    EXPECT_EQ(two->ruler.graduation, Graduation::SixteenthInch);
    const auto points = task_from({"--ruler", "1,2 300,2", "--apart-mm", "25", "scan.png"});
    ASSERT_TRUE(points.has_value());
    EXPECT_EQ(points->ruler.apart, Millimetres(25.0));
}

TEST(RulerOptions, WordsForTheSearch) {
    EXPECT_EQ(task_from({"scan.png"})->ruler.search, RulerTask::Search::Compare);
    EXPECT_EQ(task_from({"--ruler", "auto", "scan.png"})->ruler.search, RulerTask::Search::Use);
    EXPECT_EQ(task_from({"--ruler", "none", "a.png", "b.png"})->ruler.search, RulerTask::Search::No);
}

TEST(RulerOptions, WhatContradictsItselfIsRefused) {
    const std::vector<std::vector<std::string>> refused{
        {"--ruler", "1,2", "scan.png"},
        {"--ruler", "1,2 3,4 5,6", "scan.png"},
        {"--ruler", "1,2 nan,4", "scan.png"},
        {"--ruler", "along the edge", "scan.png"},
        {"--ruler", "1,2 300,2", "a.png", "b.png"},
        {"--ruler", "auto", "--ruler", "1,2 300,2", "scan.png"},
        {"--ruler", "auto", "--graduation", "1mm", "scan.png"},
        {"--graduation", "1mm", "scan.png"},
        {"--apart-mm", "10", "scan.png"},
        {"--ruler", "1,2 300,2", "--apart-mm", "10", "--graduation", "1mm", "scan.png"},
        {"--ruler", "1,2 300,2", "--graduation", "2mm", "scan.png"},
    };
    for (const auto& words : refused) {
        const auto task = task_from(words);
        ASSERT_FALSE(task.has_value()) << words[0] << " " << words[1];
        EXPECT_FALSE(task.error().remedy.empty());
    }
}

} // namespace
} // namespace pithward::batch
