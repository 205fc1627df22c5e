#include "app/bench/control/time_left.h"

#include <gtest/gtest.h>

namespace pithward::bench {
namespace {

TEST(TimeLeft, FollowsFromTheShareThatIsDone) {
    EXPECT_EQ(seconds_left(30.0, 0.25), 90.0);
    EXPECT_EQ(seconds_left(30.0, 1.0), 0.0);
}

TEST(TimeLeft, IsNotGuessedFromNearlyNothing) {
    EXPECT_FALSE(seconds_left(1.0, 0.5));
    EXPECT_FALSE(seconds_left(30.0, 0.01));
    EXPECT_FALSE(seconds_left(30.0, 0.0));
}

} // namespace
} // namespace pithward::bench
