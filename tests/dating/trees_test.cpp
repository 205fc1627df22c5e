#include "libcore/dating/trees.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

using namespace dating;
using Names = std::vector<std::string>;

TEST(Trees, TakeALetterAfterADigitForTheCore) {
    const Trees trees = trees_by_stem({"A01a", "A01b", "A02a", "B7"});
    EXPECT_EQ(trees.of_series, (Names{"A01", "A01", "A02", "B7"}));
    EXPECT_TRUE(trees.guessed);
    EXPECT_NE(trees.remark.find("3 trees of 4 series"), std::string::npos);
}

TEST(Trees, TakeALastDigitForTheCoreOnlyWhereAllAreLow) {
    EXPECT_EQ(trees_by_stem({"528011", "528012", "528021", "528022"}).of_series,
              (Names{"52801", "52801", "52802", "52802"}));
    EXPECT_EQ(trees_by_stem({"A01", "A02", "A09"}).of_series, (Names{"A01", "A02", "A09"}));
}

TEST(Trees, DoNotTakeASiteForATree) {
    const Names numbered{"A01", "A02", "A03", "A04"};
    EXPECT_EQ(trees_by_stem(numbered).of_series, numbered);
    EXPECT_FALSE(trees_by_stem(numbered).guessed);
}

TEST(Trees, DropWhatDividesCoreFromTree) {
    EXPECT_EQ(trees_by_stem({"33-1a", "48-1b"}).of_series, (Names{"33-1", "48-1"}));
    EXPECT_EQ(trees_by_stem({}).of_series, Names{});
    EXPECT_EQ(trees_by_stem({"a"}).of_series, Names{"a"});
}

} // namespace
} // namespace pithward::test
