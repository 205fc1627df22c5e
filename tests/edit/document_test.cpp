#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/document.h"
#include "libcore/edit/reading_edits.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward {
namespace {

EditStamp by(const char* who) {
    return {who, "2024-06-30T12:00:00Z", "0.1.0"};
}

Document document_of(const Reading& reading) {
    return *Document::open(reading);
}

void confirm_in(Document& document, std::int64_t boundary, const char* who) {
    const auto made = document.make(*confirm(document.reading(), BoundaryId{boundary}), by(who));
    ASSERT_TRUE(made.has_value()) << made.error().line();
    ASSERT_TRUE(*made);
}

Confirmation confirmation(const Document& document, std::size_t index) {
    return document.reading().boundaries.at(index).confirmation;
}

TEST(Document, ARecordTellsWhoWhenAndWhat) {
    Document document = document_of(test::straight_reading({1, 2}));
    EXPECT_EQ(document.revision(), 0);
    confirm_in(document, 1, "Ida");
    ASSERT_EQ(document.log().size(), 1U);
    EXPECT_EQ(document.revision(), 1);
    const EditRecord& record = document.log().front();
    EXPECT_EQ(record.who, "Ida");
    EXPECT_EQ(record.when, "2024-06-30T12:00:00Z");
    EXPECT_EQ(record.program_version, "0.1.0");
    EXPECT_FALSE(record.undoes);
}

TEST(Document, AnEditThatChangesNothingLeavesNoRecord) {
    Document document = document_of(test::straight_reading({1, 2}));
    confirm_in(document, 1, "Ida");
    EXPECT_FALSE(document.make(*confirm(document.reading(), BoundaryId{1}), by("Ida")).value());
    EXPECT_FALSE(document.make({EditGroup{"nothing", {}}}, by("Ida")).value());
    EXPECT_EQ(document.log().size(), 1U);
}

TEST(Document, UndoIsANewEditThatNamesTheUndoneOne) {
    Document document = document_of(test::straight_reading({1, 2}));
    confirm_in(document, 1, "Ida");
    EXPECT_TRUE(document.undo(by("Ida")).value());
    ASSERT_EQ(document.log().size(), 2U);
    EXPECT_EQ(document.log()[1].undoes, EditId{1});
    EXPECT_EQ(confirmation(document, 0), Confirmation::None);
    EXPECT_FALSE(document.undo(by("Ida")).value()) << "nothing is left to undo";
    EXPECT_TRUE(document.redo(by("Ida")).value());
    EXPECT_EQ(document.log()[2].undoes, EditId{2});
    EXPECT_EQ(confirmation(document, 0), Confirmation::LookedAt);
    EXPECT_FALSE(document.redo(by("Ida")).value());
    EXPECT_EQ(label_of(document.log(), document.log()[0]), "Change a ring boundary");
    EXPECT_EQ(label_of(document.log(), document.log()[1]), "Undo: Change a ring boundary");
    EXPECT_EQ(label_of(document.log(), document.log()[2]), "Redo: Change a ring boundary");
}

TEST(Document, UndoAndRedoGoBackAndForthInOrder) {
    Document document = document_of(test::straight_reading({1, 2, 3}));
    for (int boundary = 1; boundary <= 3; ++boundary) {
        confirm_in(document, boundary, "Ida");
    }
    const auto confirmed = [&] {
        std::string text;
        for (std::size_t i = 0; i < 3; ++i) {
            text += confirmation(document, i) == Confirmation::LookedAt ? '1' : '0';
        }
        return text;
    };
    (void)document.undo(by("Ida"));
    EXPECT_EQ(confirmed(), "110");
    (void)document.undo(by("Ida"));
    EXPECT_EQ(confirmed(), "100");
    (void)document.redo(by("Ida"));
    EXPECT_EQ(confirmed(), "110");
    (void)document.undo(by("Ida"));
    EXPECT_EQ(confirmed(), "100");
    (void)document.undo(by("Ida"));
    EXPECT_EQ(confirmed(), "000");
    (void)document.redo(by("Ida"));
    confirm_in(document, 3, "Ida"); // ends the redo of the second
    EXPECT_FALSE(document.redo(by("Ida")).value());
    EXPECT_EQ(confirmed(), "101");
    (void)document.undo(by("Ida"));
    (void)document.undo(by("Ida"));
    EXPECT_EQ(confirmed(), "000");
}

TEST(Document, EachPersonUndoesTheirOwnLatestEdit) {
    Document document = document_of(test::straight_reading({1, 2}));
    confirm_in(document, 1, "Ida");
    confirm_in(document, 2, "Udo");
    EXPECT_TRUE(document.undo(by("Ida")).value());
    EXPECT_EQ(confirmation(document, 0), Confirmation::None);
    EXPECT_EQ(confirmation(document, 1), Confirmation::LookedAt);
    EXPECT_FALSE(document.undo(by("Ida")).value());
}

TEST(Document, UndoIsRefusedWhereALaterEditTouchesTheSame) {
    Document document = document_of(test::straight_reading({1, 2}));
    confirm_in(document, 1, "Ida");
    ASSERT_TRUE(document.make(*annotate(document.reading(), BoundaryId{1}, "a crack"), by("Udo")).value());
    const auto refused = document.undo(by("Ida"));
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().line(), "a later edit by Udo touches ring boundary 1 too; take that one back first");
    EXPECT_EQ(document.log().size(), 2U);
    EXPECT_TRUE(document.undo(by("Udo")).value());
    EXPECT_TRUE(document.undo(by("Ida")).value());
}

TEST(Document, AnAbsentRingKeepsTheUndoOfItsBoundaryBack) {
    Document document = document_of(test::straight_reading({1, 3}));
    BoundaryPlace place;
    place.at = test::on_straight_path(2);
    ASSERT_TRUE(document.make(add_boundary(place, BoundaryId{document.fresh_id()}), by("Ida")).value());
    const BoundaryId added = document.reading().boundaries[1].id;
    ASSERT_TRUE(document.make(*add_absent_ring(document.reading(), added, AbsentRingId{document.fresh_id()}), by("Udo"))
                    .value());
    EXPECT_FALSE(document.undo(by("Ida")).has_value());
}

TEST(Document, AnEditOfAPassedReadingSetsItBackToMarked) {
    Document document = document_of(test::straight_reading({1, 2}));
    ASSERT_TRUE(document.make(set_state(document.reading(), Reading::State::Passed), by("Sue")).value());
    EXPECT_EQ(document.reading().state, Reading::State::Passed);
    confirm_in(document, 1, "Ida");
    EXPECT_EQ(document.reading().state, Reading::State::Marked);
    EXPECT_EQ(document.log().size(), 2U);
    EXPECT_TRUE(document.undo(by("Ida")).value());
    EXPECT_EQ(document.reading().state, Reading::State::Passed) << "it is again what was passed";
}

TEST(Document, TakingBackAnOldEditOfAPassedReadingSetsItBackToMarkedToo) {
    Document document = document_of(test::straight_reading({1, 2}));
    confirm_in(document, 1, "Ida");
    ASSERT_TRUE(document.make(set_state(document.reading(), Reading::State::Passed), by("Sue")).value());
    EXPECT_TRUE(document.undo(by("Ida")).value());
    EXPECT_EQ(confirmation(document, 0), Confirmation::None);
    EXPECT_EQ(document.reading().state, Reading::State::Marked);
}

TEST(Document, TheReadingOfAnyEarlierMomentIsThere) {
    const Reading first = test::straight_reading({1, 2});
    Document document = document_of(first);
    confirm_in(document, 1, "Ida");
    const Reading second = document.reading();
    confirm_in(document, 2, "Ida");
    EXPECT_EQ(reading_at(document, EditId{0}).value(), first);
    EXPECT_EQ(reading_at(document, EditId{1}).value(), second);
    EXPECT_EQ(reading_at(document, EditId{2}).value(), document.reading());
}

TEST(Document, ALogOutOfOrderIsRefused) {
    EditRecord record;
    record.id = EditId{2};
    EXPECT_FALSE(Document::open(test::straight_reading({1}), {record, record}).has_value());
    Reading hanging = test::straight_reading({1});
    hanging.absent_rings.push_back(test::absent_at(9));
    EXPECT_FALSE(Document::open(hanging).has_value());
}

} // namespace
} // namespace pithward
