#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/edit_json.h"
#include "libcore/edit/reading_edits.h"
#include "libcore/record/project.h"
#include "tests/edit/random_edits.h"
#include "tests/record/made_up_project.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

#include <filesystem>

namespace pithward::record {
namespace {

using test::made_up_project;
using test::opened;
using test::stamp_by;

TEST(Project, TheFieldSheetComesBack) {
    const test::TemporaryFolder folder;
    { const Project project = made_up_project(folder.file("a.pithward")); }
    const auto cores = opened(folder.file("a.pithward"), Project::Access::Read).cores();
    ASSERT_TRUE(cores.has_value()) << cores.error().line();
    ASSERT_EQ(cores->size(), 4U);
    const std::vector<Site> sites = test::made_up_sites();
    EXPECT_EQ(cores->at(0).core, sites[0].trees[0].cores[0]);
    EXPECT_EQ(cores->at(1).core, sites[0].trees[0].cores[1]);
    EXPECT_EQ(cores->at(3).site.id, "Vale");
    Tree tree = sites[0].trees[0];
    tree.cores.clear();
    EXPECT_EQ(cores->at(0).tree, tree);
    EXPECT_EQ(cores->at(2).tree.living, false);
    EXPECT_EQ(cores->at(0).site.latitude, 46.5);
    EXPECT_FALSE(cores->at(0).site.elevation_m);
    EXPECT_EQ(cores->at(0).accepted, ReadingId{1});
    EXPECT_FALSE(cores->at(3).accepted);
}

TEST(Project, FieldDataIsChangedForTheCoreItsTreeAndItsSite) {
    const test::TemporaryFolder folder;
    Project project = made_up_project(folder.file("a.pithward"));
    const CoreEntry before = project.cores().value().at(0);
    CoreEntry after = before;
    after.core.notes = "a scar at 40 mm";
    after.tree.lean_deg = 0.0; // nothing and 0 are two things
    after.site.elevation_m = 1210.0;
    const auto done = project.put_details(before, after, "Change the field data of A01a", stamp_by("Ida"));
    ASSERT_TRUE(done.has_value()) << done.error().line();

    const auto cores = project.cores().value();
    EXPECT_EQ(cores.at(0), after);
    EXPECT_EQ(cores.at(1).tree, after.tree); // the same tree's other core
    EXPECT_EQ(cores.at(2).site, after.site);
    EXPECT_EQ(cores.at(1).core, test::made_up_sites()[0].trees[0].cores[1]);
    const HistoryEntry last = project.history(before.id).value().back();
    EXPECT_EQ(last.label, "Change the field data of A01a");
    EXPECT_EQ(last.who, "Ida");
}

TEST(Project, OtherColumnsOfACoreAreChangedTakenAwayAndNotWrittenOver) {
    const test::TemporaryFolder folder;
    Project project = made_up_project(folder.file("a.pithward"));
    const CoreEntry before = project.cores().value().at(0);
    ASSERT_FALSE(before.core.others.empty());
    CoreEntry after = before;
    after.core.others["scan_place"] = "2";
    after.core.others["weather"] = "sun";
    after.core.others.erase("Wetter");
    ASSERT_TRUE(project.put_details(before, after, "Change it", stamp_by("Ida")).has_value());
    EXPECT_EQ(project.cores().value().at(0), after);
    EXPECT_FALSE(project.put_details(before, after, "Again", stamp_by("Jon")).has_value())
        << "it is no longer as before";
    EXPECT_EQ(project.cores().value().at(0), after);
}

TEST(Project, FieldDataThatSomebodyElseChangedIsNotWrittenOver) {
    const test::TemporaryFolder folder;
    Project project = made_up_project(folder.file("a.pithward"));
    const CoreEntry before = project.cores().value().at(0);
    CoreEntry theirs = before;
    theirs.tree.dbh_cm = 44.5;
    ASSERT_TRUE(project.put_details(before, theirs, "theirs", stamp_by("Jon")).has_value());
    CoreEntry ours = before;
    ours.core.notes = "resin";
    ours.tree.dbh_cm = 45.0;
    const auto refused = project.put_details(before, ours, "ours", stamp_by("Ida"));
    ASSERT_FALSE(refused.has_value());
    EXPECT_NE(refused.error().line().find("dbh_cm"), std::string::npos) << refused.error().line();
    EXPECT_EQ(project.cores().value().at(0), theirs); // and nothing of it, the note neither

    ours.tree.dbh_cm = before.tree.dbh_cm; // what is changed elsewhere in the row does not matter
    ASSERT_TRUE(project.put_details(before, ours, "ours", stamp_by("Ida")).has_value());
    EXPECT_EQ(project.cores().value().at(0).tree.dbh_cm, 44.5);
    EXPECT_EQ(project.cores().value().at(0).core.notes, "resin");
}

TEST(Project, IsOneFileAfterACleanClose) {
    const test::TemporaryFolder folder;
    { const Project project = made_up_project(folder.file("a.pithward")); }
    int files = 0;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::filesystem::path(folder.file("a")).parent_path())) {
        EXPECT_EQ(entry.path().filename(), "a.pithward");
        ++files;
    }
    EXPECT_EQ(files, 1);
}

TEST(Project, AReadingComesBackToTheLastBit) {
    const test::TemporaryFolder folder;
    Project project = made_up_project(folder.file("a.pithward"));
    for (unsigned seed = 1; seed <= 20; ++seed) {
        std::mt19937 random(seed);
        Reading reading = test::random_reading(random);
        for (Candidate& candidate : reading.not_annual) {
            candidate.curve.clear(); // their curves are put on a grid once
        }
        const auto id = project.add_reading(CoreId{4}, reading, "Propose a reading", stamp_by("Ida"));
        ASSERT_TRUE(id.has_value()) << id.error().line();
        reading.id = *id;
        reading.core = "H01A";
        EXPECT_EQ(project.reading(*id).value(), reading) << "seed " << seed;
    }
}

TEST(Project, EveryEditIsOnTheDiskAndInTheHistory) {
    const test::TemporaryFolder folder;
    const std::string file = folder.file("a.pithward");
    Document expected;
    {
        Project project = made_up_project(file);
        expected = project.document(ReadingId{1}).value();
        std::mt19937 random(5);
        for (int n = 0; n < 200; ++n) {
            const EditStamp stamp = stamp_by(random() % 2 == 0 ? "Ida" : "Udo");
            const unsigned what = random() % 5;
            const Edit edit = test::random_edit(expected, random);
            const auto told = what == 0   ? project.undo(ReadingId{1}, stamp)
                              : what == 1 ? project.redo(ReadingId{1}, stamp)
                                          : project.edit(ReadingId{1}, edit, stamp);
            const auto made = what == 0   ? expected.undo(stamp)
                              : what == 1 ? expected.redo(stamp)
                                          : expected.make(edit, stamp);
            ASSERT_EQ(told.has_value(), made.has_value()) << (told ? "" : told.error().line());
            if (made.value_or(false)) {
                ASSERT_TRUE(told->has_value());
                EXPECT_EQ(**told, expected.log().back());
            }
        }
    }
    EXPECT_GT(expected.log().size(), 80U);
    const Project again = opened(file, Project::Access::Read);
    const auto document = again.document(ReadingId{1});
    ASSERT_TRUE(document.has_value()) << document.error().line();
    EXPECT_EQ(document->reading(), expected.reading());
    EXPECT_EQ(document->log(), expected.log());
    EXPECT_EQ(again.readings()->at(0).revision, expected.revision());
    const auto history = again.history(CoreId{1});
    ASSERT_TRUE(history.has_value());
    EXPECT_EQ(history->size(), expected.log().size() + 1);
    EXPECT_EQ(history->at(0).label, "Propose a reading");
    EXPECT_EQ(edit_from_json(history->back().body).value(), expected.log().back().edit);
    EXPECT_TRUE(again.check().has_value());
}

TEST(Project, CountsTellHowMuchWasLookedAt) {
    const test::TemporaryFolder folder;
    Project project = made_up_project(folder.file("a.pithward"));
    const Reading reading = project.reading(ReadingId{1}).value();
    ASSERT_TRUE(project.edit(ReadingId{1}, *confirm(reading, reading.boundaries[0].id), stamp_by("Ida")).has_value());
    ASSERT_TRUE(project.edit(ReadingId{1}, confirm_above(project.reading(ReadingId{1}).value(), 0.5), stamp_by("Ida"))
                    .has_value());
    const Reading after = project.reading(ReadingId{1}).value();
    const auto entry = project.readings()->at(0);
    int in_bulk = 0;
    for (const Boundary& boundary : after.boundaries) {
        in_bulk += boundary.confirmation == Confirmation::InBulk ? 1 : 0;
    }
    EXPECT_GT(in_bulk, 0);
    EXPECT_EQ(entry.in_bulk, in_bulk);
    EXPECT_EQ(entry.looked_at, 1);
    EXPECT_EQ(entry.boundaries, static_cast<int>(after.boundaries.size()));
    EXPECT_EQ(entry.findings, static_cast<int>(after.findings.size()));
    EXPECT_EQ(entry.open_findings, entry.findings);
    EXPECT_EQ(entry.state, "proposed");
}

TEST(Project, ARefusedEditChangesNothing) {
    const test::TemporaryFolder folder;
    Project project = made_up_project(folder.file("a.pithward"));
    const Document before = project.document(ReadingId{1}).value();
    const Boundary& first = before.reading().boundaries[0];
    Boundary wrong = first;
    wrong.note = "never there";
    const Edit half{EditGroup{"half",
                              {*annotate(before.reading(), before.reading().boundaries[1].id, "done first"),
                               {Changed<Boundary>{wrong, first}}}}};
    const auto refused = project.edit(ReadingId{1}, half, stamp_by("Ida"));
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(project.document(ReadingId{1})->reading(), before.reading());
    EXPECT_EQ(project.document(ReadingId{1})->revision(), 0);
    EXPECT_FALSE(project.edit(ReadingId{1}, set_note(before.reading(), "\xFF"), stamp_by("Ida")).has_value());
    EXPECT_EQ(project.document(ReadingId{1})->reading(), before.reading());
    EXPECT_FALSE(project.edit(ReadingId{99}, set_note(before.reading(), "x"), stamp_by("Ida")).has_value());
}

TEST(Project, AnotherReadingCanBeAccepted) {
    const test::TemporaryFolder folder;
    Project project = made_up_project(folder.file("a.pithward"));
    std::mt19937 random(9);
    const auto second =
        project.add_reading(CoreId{1}, test::random_reading(random), "Read a second time", stamp_by("Udo"));
    EXPECT_EQ(project.cores()->at(0).accepted, ReadingId{1});
    ASSERT_TRUE(project.accept(*second, stamp_by("Sue")).has_value());
    EXPECT_EQ(project.cores()->at(0).accepted, *second);
    EXPECT_EQ(project.history(CoreId{1})->back().who, "Sue");
    EXPECT_FALSE(project.accept(ReadingId{77}, stamp_by("Sue")).has_value());
    EXPECT_FALSE(project.add_reading(CoreId{99}, test::random_reading(random), "", stamp_by("Udo")).has_value());
}

TEST(Project, ScansAndPeopleAreKept) {
    const test::TemporaryFolder folder;
    Project project = made_up_project(folder.file("a.pithward"));
    const ScanEntry scan{"trays/H01A.jpg", 12345, ""};
    ASSERT_TRUE(project.put_scan(scan, stamp_by("Ida")).has_value());
    ScanEntry summed = scan;
    summed.sha256 = "00ff";
    ASSERT_TRUE(project.put_scan(summed, stamp_by("Ida")).has_value());
    EXPECT_EQ(project.scans().value(), std::vector<ScanEntry>{summed});
    ASSERT_TRUE(project.put_person({"Sue", "supervisor"}, stamp_by("Ida")).has_value());
    EXPECT_EQ(project.people().value(), (std::vector<Person>{{"Sue", "supervisor"}}));
}

TEST(Project, ACopyIsAProjectWhileTheOtherIsOpen) {
    const test::TemporaryFolder folder;
    Project project = made_up_project(folder.file("a.pithward"));
    ASSERT_TRUE(project.copy_to(folder.file("copy.pithward")).has_value());
    EXPECT_EQ(opened(folder.file("copy.pithward")).reading(ReadingId{2}).value(),
              project.reading(ReadingId{2}).value());
    EXPECT_FALSE(project.copy_to(folder.file("copy.pithward")).has_value());
}

TEST(Project, CreatingWritesOverNothing) {
    const test::TemporaryFolder folder;
    const std::string file = folder.write("a.pithward", "mine");
    const auto refused = Project::create(file, test::made_up_sites(), {}, stamp_by("Ida"));
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(test::bytes_of(file), "mine");
    EXPECT_FALSE(Project::create(folder.file("no/such/folder.pithward"), {}, {}, stamp_by("Ida")).has_value());
}

TEST(Project, AnEditThatCouldNotBeReadAgainIsRefused) {
    // A note of any length was written once, and the reading could not be opened any more.
    const test::TemporaryFolder folder;
    Project project = made_up_project(folder.file("a.pithward"));
    Reading reading = project.reading(ReadingId{1}).value();
    const std::string long_note(20'001, 'x');
    EXPECT_FALSE(project.edit(ReadingId{1}, set_note(reading, long_note), stamp_by("Ida")).has_value());
    EXPECT_EQ(project.reading(ReadingId{1}).value(), reading);
    reading.note = long_note;
    EXPECT_FALSE(project.add_reading(CoreId{1}, reading, "Read it", stamp_by("Ida")).has_value());
    EXPECT_EQ(project.readings()->size(), 3U);
}

} // namespace
} // namespace pithward::record
