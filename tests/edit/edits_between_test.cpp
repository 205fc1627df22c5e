#include "libcore/edit/apply.h"
#include "libcore/edit/edits_between.h"
#include "tests/edit/random_edits.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace pithward {
namespace {

TEST(EditsBetween, MakeTheOneOfTheOther) {
    for (unsigned seed = 1; seed <= 60; ++seed) {
        std::mt19937 random(seed);
        const Reading before = test::random_reading(random);
        const Reading after = test::random_reading(random);
        const Edit edit = edits_between(before, after, "Read anew");
        const auto made = apply(before, edit);
        ASSERT_TRUE(made.has_value()) << made.error().line() << ", seed " << seed;
        EXPECT_EQ(*made, after) << "seed " << seed;
        EXPECT_EQ(apply(*made, inverse(edit)).value(), before) << "seed " << seed;
        EXPECT_TRUE(changes_nothing(edits_between(before, before, "")));
    }
}

TEST(EditsBetween, TurnAPathRound) {
    const Reading before = *readied(test::straight_reading({1, 2, 5}));
    Reading after = before;
    std::ranges::reverse(after.path.legs[0].points);
    std::ranges::reverse(after.boundaries);
    after.bark_end.how = "given";
    const auto made = apply(before, edits_between(before, after, "Turn the path round"));
    ASSERT_TRUE(made.has_value()) << made.error().line();
    EXPECT_EQ(*made, after);
    test::expect_widths(test::measured(*made), {3.0, 1.0});
}

TEST(EditsBetween, LeaveAloneWhatIsAlike) {
    const Reading before = *readied(test::straight_reading({1, 2, 3}));
    Reading after = before;
    after.boundaries[1].note = "wavy";
    const Edit edit = edits_between(before, after, "Note");
    EXPECT_EQ(std::get<EditGroup>(edit.body).edits.size(), 1U);
}

} // namespace
} // namespace pithward
