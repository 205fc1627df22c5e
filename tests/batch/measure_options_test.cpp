#include "tests/batch/task_from.h"

#include <gtest/gtest.h>

namespace pithward::batch {
namespace {

TEST(MeasureOptions, AnEmptyValueIsAMistakeAndNotADefault) {
    for (const char* option : {"--path", "--from", "--dpi", "--ruler", "--wood", "--outer", "--last-year", "--json",
                               "--csv", "--decadal", "--overlay"}) {
        const auto task = task_from({option, "", "scan.png"});
        ASSERT_FALSE(task.has_value()) << option;
        EXPECT_NE(task.error().line().find(option), std::string::npos) << task.error().line();
    }
    EXPECT_FALSE(task_from({""}).has_value());
    EXPECT_TRUE(task_from({"scan.png"}).has_value());
}

TEST(MeasureOptions, TheWayThatAPathRuns) {
    const std::vector<ImagePoint> from_bark{{1, 2}, {300, 4}};
    EXPECT_EQ(task_from({"--path", "1,2 300,4", "scan.png"})->path, from_bark);
    EXPECT_EQ(task_from({"--path", "1,2 300,4", "--from", "bark", "scan.png"})->path, from_bark);
    EXPECT_EQ(task_from({"--path", "300,4 1,2", "--from", "pith", "scan.png"})->path, from_bark);
}

TEST(MeasureOptions, WhatCantBeMeantIsRefusedByTheNameOfItsOption) {
    const std::pair<std::vector<std::string>, const char*> refused[] = {
        {{"--from", "pith", "scan.png"}, "--from"},          {{"--path", "1,2", "scan.png"}, "--path"},
        {{"--path", "1,2 3;4", "scan.png"}, "--path"},       {{"--path", "1,2 30,4", "a.png", "b.png"}, "--path"},
        {{"--overlay", "picture.jpg", "scan.png"}, ".png"},  {{"--overlay", "picture", "scan.png"}, ".png"},
        {{"--decadal", "a.rwl", "scan.png"}, "--last-year"}, {{"--last-year", "4000", "scan.png"}, "--last-year"},
        {{"scan.png", "site.pithward"}, "name it first"},
    };
    for (const auto& [words, named] : refused) {
        const auto task = task_from(words);
        ASSERT_FALSE(task.has_value()) << words[0];
        EXPECT_NE(task.error().line().find(named), std::string::npos) << task.error().line();
    }
}

} // namespace
} // namespace pithward::batch
