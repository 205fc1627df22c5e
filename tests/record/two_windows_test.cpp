#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/reading_edits.h"
#include "libcore/record/connection.h"
#include "tests/record/made_up_project.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

namespace pithward::record {
namespace {

using test::stamp_by;

struct TwoWindows : testing::Test {
    test::TemporaryFolder folder;
    Project one = test::made_up_project(folder.file("a.pithward"));
    Project two = test::opened(folder.file("a.pithward"));
    ReadingId id{1};
};

TEST_F(TwoWindows, EachSeesTheEditsOfTheOther) {
    const auto before = two.changes_by_others().value();
    const Reading reading = one.reading(id).value();
    ASSERT_TRUE(one.edit(id, set_note(reading, "wavy rings"), stamp_by("Ida")).has_value());
    EXPECT_NE(two.changes_by_others().value(), before);
    EXPECT_EQ(two.reading(id)->note, "wavy rings");
    const auto own = two.changes_by_others().value();
    ASSERT_TRUE(two.edit(id, set_note(two.reading(id).value(), "straight"), stamp_by("Udo")).has_value());
    EXPECT_EQ(two.changes_by_others().value(), own) << "one's own edits are no news";
}

TEST_F(TwoWindows, ACoreThatBothReadAtOnceGetsOneReading) {
    const std::size_t before = one.readings()->size();
    const Reading reading = one.reading(id).value();
    const CoreId read = one.readings()->front().core;
    const auto again = two.add_reading(read, reading, "Read it", stamp_by("Udo"), Project::Beside::None);
    ASSERT_TRUE(again.has_value());
    EXPECT_FALSE(again->has_value()) << "somebody else has read it";
    EXPECT_EQ(one.readings()->size(), before);
    EXPECT_TRUE(two.add_reading(read, reading, "Again", stamp_by("Udo"), Project::Beside::Others)->has_value());
    EXPECT_EQ(one.readings()->size(), before + 1);
}

TEST_F(TwoWindows, ATextInThePlaceOfANumberIsDamageAndNotZero) {
    const auto connection = Connection::open(folder.file("a.pithward"), Connection::Mode::Write).value();
    const ReadingId with_boundaries = one.readings()->front().id;
    ASSERT_TRUE(connection->change("UPDATE boundary SET x = 'abc' WHERE reading = ?", {to_sql(with_boundaries.value)}));
    const auto read = two.reading(with_boundaries);
    ASSERT_FALSE(read.has_value());
    EXPECT_NE(read.error().line().find("damaged"), std::string::npos) << read.error().line();
}

TEST_F(TwoWindows, EditsOfDifferentBoundariesBothHold) {
    const Reading seen = one.reading(id).value();
    ASSERT_TRUE(one.edit(id, *annotate(seen, seen.boundaries[0].id, "one"), stamp_by("Ida")).has_value());
    ASSERT_TRUE(two.edit(id, *annotate(seen, seen.boundaries[1].id, "two"), stamp_by("Udo")).has_value());
    ASSERT_TRUE(one.edit(id, *annotate(seen, seen.boundaries[2].id, "three"), stamp_by("Ida")).has_value());
    const Document document = two.document(id).value();
    EXPECT_EQ(document.reading().boundaries[0].note, "one");
    EXPECT_EQ(document.reading().boundaries[1].note, "two");
    EXPECT_EQ(document.reading().boundaries[2].note, "three");
    EXPECT_EQ(document.revision(), 3);
}

TEST_F(TwoWindows, AnEditOfWhatTheOtherChangedIsRefusedAndNothingIsLost) {
    const Reading seen = one.reading(id).value();
    ASSERT_TRUE(one.edit(id, *annotate(seen, seen.boundaries[0].id, "one"), stamp_by("Ida")).has_value());
    const auto refused = two.edit(id, *annotate(seen, seen.boundaries[0].id, "two"), stamp_by("Udo"));
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().what, "the ring boundary is no longer what it was when this edit was begun");
    EXPECT_EQ(two.reading(id)->boundaries[0].note, "one");
    EXPECT_EQ(two.history()->size(), one.history()->size());
}

} // namespace
} // namespace pithward::record
