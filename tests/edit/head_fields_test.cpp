#include "libcore/edit/document.h"
#include "libcore/edit/edit_json.h"
#include "libcore/edit/reading_edits.h"
#include "libcore/edit/reading_head.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward {
namespace {

EditStamp stamp_of(const char* who) {
    return {who, "2026-01-01T00:00:00Z", "1"};
}

Edit place_pith(const Reading& reading, double s_mm) {
    ReadingHead head = head_of(reading);
    head.pith = test::pith_at(s_mm);
    head.pith->source = Pith::Source::Hand;
    return change_head(reading, std::move(head));
}

/// A pith that is judged after a year was set must not keep a person from taking the year back.
TEST(HeadFields, AreTakenBackEachForItself) {
    auto document = Document::open(test::straight_reading({1.0, 2.0, 3.0})).value();
    ASSERT_TRUE(document.make(set_last_year(document.reading(), Year(1999)), stamp_of("anna")).value());
    ASSERT_TRUE(document.make(place_pith(document.reading(), 5.0), stamp_of("Pithward")).value());
    ASSERT_TRUE(document.undo(stamp_of("anna")).value());
    EXPECT_FALSE(document.reading().last_year);
    EXPECT_TRUE(document.reading().pith);
    ASSERT_TRUE(document.redo(stamp_of("anna")).value());
    EXPECT_EQ(document.reading().last_year, Year(1999));
    EXPECT_TRUE(document.reading().pith);
    const Reading first = reading_at(document, EditId{0}).value();
    EXPECT_FALSE(first.last_year);
    EXPECT_FALSE(first.pith);
}

TEST(HeadFields, TheSameFieldIsStillGuarded) {
    auto document = Document::open(test::straight_reading({1.0, 2.0, 3.0})).value();
    ASSERT_TRUE(document.make(place_pith(document.reading(), 5.0), stamp_of("anna")).value());
    ASSERT_TRUE(document.make(place_pith(document.reading(), 6.0), stamp_of("bert")).value());
    const auto refused = document.undo(stamp_of("anna"));
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.error().what.find("the pith"), std::string::npos) << refused.error().line();
}

TEST(HeadFields, APithByHandGoesToJsonAndBack) {
    const Edit edit = place_pith(test::straight_reading({1.0, 2.0, 3.0}), 5.0);
    EXPECT_EQ(edit_from_json(edit_to_json(edit).value()).value(), edit);
}

} // namespace
} // namespace pithward
