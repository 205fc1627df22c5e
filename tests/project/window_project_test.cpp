// A project in the real window: its cores, what is written at once, what is refused, two windows on one file.
#include "app/bench/panels/message_bar.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "app/project/project_list.h"
#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/reading_edits.h"
#include "tests/project/fake_project.h"

#include <gtest/gtest.h>

#include <QTest>

namespace pithward::bench {
namespace {

using record::Project;

class WindowProject : public FakeProject {
protected:
    void SetUp() override {
        FakeProject::SetUp();
        open(window, "Ida");
    }
    const BenchModel& model() { return window.control().model(); }
    const Reading& reading() { return model().core()->reading; }
    void trigger(ActionId id) {
        window.actions().at(id)->trigger();
        QCoreApplication::processEvents();
    }
    bool all_written() { return written(window); }

    Appearance appearance;
    MainWindow window{open_fake, appearance};
};

TEST_F(WindowProject, OpensOnTheFirstCoreThatWaitsAndListsTheStates) {
    EXPECT_EQ(window.windowTitle(), "H01A, hill – Pithward");
    ASSERT_EQ(window.project_list().topLevelItemCount(), 4);
    const auto text = [&](int row, int column) { return window.project_list().topLevelItem(row)->text(column); };
    EXPECT_EQ(text(0, 0), "H01A");
    EXPECT_EQ(text(0, 1), "proposed");
    EXPECT_EQ(text(0, 2), "1 open");
    EXPECT_EQ(text(2, 1), "not read");
    EXPECT_EQ(reading().id, ReadingId{1});
    EXPECT_TRUE(window.project_list().isVisible());
}

TEST_F(WindowProject, AnEditIsWrittenAtOnceWithWhoAndVersion) {
    window.editor().take_up(reading().boundaries[3].id);
    trigger(ActionId::Confirm);
    EXPECT_GT(window.desk().waiting(), 0) << "pending until the store has answered";
    ASSERT_TRUE(all_written());
    const Document kept = test::opened(file, Project::Access::Read).document(ReadingId{1}).value();
    EXPECT_EQ(kept.reading().boundaries[3].confirmation, Confirmation::LookedAt);
    ASSERT_EQ(kept.log().size(), 1U);
    EXPECT_EQ(kept.log()[0].who, "Ida");
    EXPECT_EQ(kept.log(), model().document()->log());
}

TEST_F(WindowProject, UndoAndRedoAreWrittenToo) {
    window.editor().take_up(reading().boundaries[3].id);
    trigger(ActionId::DeleteBoundary);
    trigger(ActionId::Undo);
    trigger(ActionId::Redo);
    trigger(ActionId::Undo);
    ASSERT_TRUE(all_written());
    const Document kept = test::opened(file, Project::Access::Read).document(ReadingId{1}).value();
    EXPECT_EQ(kept.log().size(), 4U);
    EXPECT_EQ(kept.reading(), reading());
    EXPECT_TRUE(window.messages().text().isEmpty()) << window.messages().text().toStdString();
}

TEST_F(WindowProject, ARefusedEditIsTakenBackAndTold) {
    const Reading seen = reading();
    {
        Project other = test::opened(file);
        ASSERT_TRUE(other.edit(seen.id, annotate(seen, seen.boundaries[3].id, "mine").value(), test::stamp_by("Udo"))
                        .has_value());
    } // before this window has looked
    window.editor().take_up(seen.boundaries[3].id);
    window.editor().annotate("no, mine");
    ASSERT_TRUE(all_written());
    EXPECT_TRUE(window.messages().text().startsWith("Taken back")) << window.messages().text().toStdString();
    EXPECT_TRUE(window.messages().text().contains("no longer what it was"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return reading().boundaries[3].note == "mine"; }));
    EXPECT_EQ(test::opened(file, Project::Access::Read).document(seen.id)->log().size(), 1U);
}

TEST_F(WindowProject, ACoreWithoutAReadingIsReadAndKept) {
    window.desk().open_core(record::CoreId{3});
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.windowTitle().startsWith("H02A") && model().core() != nullptr; }));
    ASSERT_TRUE(all_written());
    const auto readings = test::opened(file, Project::Access::Read).readings().value();
    ASSERT_EQ(readings.size(), 3U);
    EXPECT_EQ(readings.back().core, record::CoreId{3});
    EXPECT_EQ(reading().id, readings.back().id);
    trigger(ActionId::FindCores);
    EXPECT_TRUE(window.messages().text().contains("stay"));
}

TEST_F(WindowProject, ADrawnPathIsASecondReadingThatCanBeAccepted) {
    window.control().read_drawn_path({{100, 180}, {1900, 180}});
    ASSERT_TRUE(QTest::qWaitFor([&] { return reading().id == ReadingId{3}; }));
    ASSERT_TRUE(all_written());
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.windowTitle().startsWith("H01A, reading 3"); }));
    trigger(ActionId::AcceptReading);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.desk().overview().cores[0].accepted == ReadingId{3}; }));
    const Project kept = test::opened(file, Project::Access::Read);
    EXPECT_EQ(kept.cores()->front().accepted, ReadingId{3});
    EXPECT_EQ(kept.history(record::CoreId{1})->back().label, "Accept reading 3");
    EXPECT_EQ(kept.reading(ReadingId{1})->boundaries.size(), 45U) << "the first one stays";
}

TEST_F(WindowProject, ACoreWithoutAScanSaysSo) {
    window.desk().open_core(record::CoreId{4});
    EXPECT_TRUE(window.messages().text().contains("has no scan"));
}

TEST_F(WindowProject, AReadingIsMarkedAsDoneWithOneKeyAndTheNextCoreIsOpened) {
    trigger(ActionId::MarkDone);
    ASSERT_TRUE(all_written());
    EXPECT_EQ(reading().state, Reading::State::Marked);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.project_list().topLevelItem(0)->text(1) == "marked"; }));
    trigger(ActionId::NextToDo);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.windowTitle().startsWith("H01B"); }));
}

TEST_F(WindowProject, AnotherWindowsEditsAreSeenWithinASecond) {
    MainWindow second{open_fake, appearance};
    open(second, "Udo");
    const Reading before = reading();
    second.editor().take_up(before.boundaries[5].id);
    second.editor().annotate("seen by both");
    window.editor().take_up(before.boundaries[2].id);
    EXPECT_TRUE(QTest::qWaitFor([&] { return reading().boundaries[5].note == "seen by both"; }, 1300));
    EXPECT_EQ(window.editor().in_hand()->id, before.boundaries[2].id) << "what is in hand stays so";
    // Both go on: each on its own boundary, and the log is the same in both.
    window.editor().annotate("by the first");
    second.editor().take_up(before.boundaries[6].id);
    second.editor().annotate("by the second");
    const auto log = [](MainWindow& one) { return one.control().model().document()->log(); };
    EXPECT_TRUE(QTest::qWaitFor([&] { return log(window).size() == 3 && log(window) == log(second); }, 3000));
    EXPECT_TRUE(window.messages().text().isEmpty()) << window.messages().text().toStdString();
}

TEST_F(WindowProject, ClosingWaitsForWhatIsNotWritten) {
    window.editor().take_up(reading().boundaries[3].id);
    window.editor().annotate("the last one");
    EXPECT_FALSE(window.close());
    EXPECT_TRUE(window.isVisible());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !window.isVisible(); }));
    EXPECT_EQ(test::opened(file, Project::Access::Read).reading(ReadingId{1})->boundaries[3].note, "the last one");
}

TEST_F(WindowProject, WhatIsNoProjectIsToldAndTheOpenOneStays) {
    window.control().open({QString::fromStdString(folder.file("gone.pithward"))});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.messages().text().isEmpty(); }));
    EXPECT_TRUE(window.desk().is_open());
    window.editor().take_up(reading().boundaries[3].id);
    window.editor().annotate("goes on");
    ASSERT_TRUE(all_written());
    EXPECT_EQ(test::opened(file, Project::Access::Read).reading(ReadingId{1})->boundaries[3].note, "goes on");
}

} // namespace
} // namespace pithward::bench
