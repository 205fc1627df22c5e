#include "libcore/edit/apply.h"
#include "libcore/edit/touched.h"
#include "tests/edit/random_edits.h"

#include <gtest/gtest.h>

namespace pithward {
namespace {

using test::random_edit;
using test::random_reading;

constexpr unsigned seeds = 40;
constexpr int edits_each = 60;
const EditStamp stamp{"Ida", "2024-06-30T12:00:00Z", "0.1.0"};

TEST(RandomEdits, InverseGivesBackTheEqualReading) {
    int made = 0;
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        std::mt19937 random(seed);
        Document document = *Document::open(random_reading(random));
        for (int n = 0; n < edits_each; ++n) {
            const Reading before = document.reading();
            const Edit edit = random_edit(document, random);
            const auto after = apply(before, edit);
            if (!after) {
                continue;
            }
            const auto back = apply(*after, inverse(edit));
            ASSERT_TRUE(back.has_value()) << back.error().line() << ", seed " << seed << ", edit " << n;
            ASSERT_EQ(*back, before) << "seed " << seed << ", edit " << n << ": " << label_of(edit);
            EXPECT_EQ(changes_nothing(edit), *after == before) << label_of(edit);
            ASSERT_TRUE(document.make(edit, stamp).has_value());
            ++made;
        }
    }
    EXPECT_GT(made, 1000) << "nearly all edits were refused";
}

TEST(RandomEdits, UndoingAllGivesTheFirstReadingAndRedoingAllTheLast) {
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        std::mt19937 random(1000 + seed);
        const Reading first = random_reading(random);
        Document document = *Document::open(first);
        for (int n = 0; n < edits_each; ++n) {
            (void)document.make(random_edit(document, random), stamp);
        }
        const Reading last = document.reading();
        const auto made = document.log().size();
        std::size_t undone = 0;
        for (auto done = document.undo(stamp); done.value(); done = document.undo(stamp)) {
            ++undone;
        }
        EXPECT_EQ(undone, made);
        EXPECT_EQ(document.reading(), first) << "seed " << seed;
        for (auto done = document.redo(stamp); done.value(); done = document.redo(stamp)) {
        }
        EXPECT_EQ(document.reading(), last) << "seed " << seed;
        EXPECT_EQ(document.log().size(), 3 * made);
    }
}

TEST(RandomEdits, AnyMixOfEditsUndoAndRedoCanBePlayedBack) {
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        std::mt19937 random(2000 + seed);
        Document document = *Document::open(random_reading(random));
        std::vector<Reading> states{document.reading()};
        for (int n = 0; n < edits_each; ++n) {
            const EditStamp by{random() % 2 == 0 ? "Ida" : "Udo", "2024-06-30T12:00:00Z", "0.1.0"};
            const unsigned what = random() % 4;
            const auto done = what == 0   ? document.undo(by)
                              : what == 1 ? document.redo(by)
                                          : document.make(random_edit(document, random), by);
            if (done.value_or(false)) {
                states.push_back(document.reading());
            }
        }
        ASSERT_EQ(document.log().size() + 1, states.size());
        for (std::size_t n = 0; n < states.size(); ++n) {
            const auto then = reading_at(document, EditId{static_cast<std::int64_t>(n)});
            ASSERT_TRUE(then.has_value()) << then.error().line();
            EXPECT_EQ(*then, states[n]) << "seed " << seed << ", after " << n << " edits";
        }
    }
}

TEST(RandomEdits, NumbersAreNeverUsedAgain) {
    std::mt19937 random(7);
    Document document = *Document::open(random_reading(random));
    for (int n = 0; n < 200; ++n) {
        const std::int64_t fresh = document.fresh_id();
        for (const EditRecord& record : document.log()) {
            ASSERT_LT(highest_id(record.edit), fresh);
        }
        (void)document.make(random_edit(document, random), stamp);
        EXPECT_GE(document.fresh_id(), fresh);
    }
}

} // namespace
} // namespace pithward
