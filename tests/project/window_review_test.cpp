// The second person's work in the real window: the queue, verdicts by keys, what is returned, the history.
#include "app/bench/panels/findings_list.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "app/project/project_list.h"
#include "app/review/core_viewer.h"
#include "app/review/history_view.h"
#include "app/review/neighbour_years.h"
#include "app/review/review_page.h"
#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/finding_edits.h"
#include "libcore/review/verdicts.h"
#include "tests/project/fake_project.h"

#include <gtest/gtest.h>

#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <QTreeWidget>

namespace pithward::bench {
namespace {

using record::Project;

class WindowReview : public FakeProject {
protected:
    /// Ida has kept the finding of both cores as it is and has marked H01A, and H01B as far as asked.
    void SetUp() override {
        FakeProject::SetUp();
        {
            Project project = test::opened(file);
            for (const std::int64_t id : {1, 2}) {
                settle(project, ReadingId{id}, "Ida");
                mark(project, ReadingId{id}, "Ida");
            }
        }
        open(window, "Sue");
        key(Qt::Key_2, Qt::ControlModifier);
        ASSERT_TRUE(shown(ReadingId{1}));
    }
    static void settle(Project& project, ReadingId id, const std::string& who) {
        const Document document = project.document(id).value();
        const auto edit = settle_finding(document.reading(), document.reading().findings[0].id,
                                         Finding::State::KeptAsItIs, "", document.fresh_id());
        ASSERT_TRUE(project.edit(id, edit.value(), test::stamp_by(who)).has_value());
    }
    static void mark(Project& project, ReadingId id, const std::string& who) {
        const auto edit = review::mark(project.reading(id).value(), who);
        ASSERT_TRUE(project.edit(id, edit.value(), test::stamp_by(who)).has_value());
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus != nullptr ? focus : &window, key, with);
        QCoreApplication::processEvents();
    }
    /// Waits until this reading is shown, with its wood.
    bool shown(ReadingId id) {
        return QTest::qWaitFor([&] {
            const auto& one = window.review().shown();
            return one && one->reading().id == id && window.review().viewer().model().core() != nullptr;
        });
    }
    Reading kept(std::int64_t id) { return test::opened(file, Project::Access::Read).reading(ReadingId{id}).value(); }
    bool all_written() { return written(window); }
    std::size_t waiting() { return window.review().items().size(); }

    Appearance appearance;
    MainWindow window{open_fake, appearance};
};

TEST_F(WindowReview, EachFindingIsShownWithItsWoodItsYearsAndWhatTheProgramSaw) {
    ASSERT_EQ(waiting(), 2U);
    EXPECT_TRUE(window.review().isVisible());
    EXPECT_EQ(window.windowTitle(), "Review, hill – Pithward");
    const QString story = window.review().story();
    EXPECT_TRUE(story.contains("Reason: made up")) << story.toStdString();
    EXPECT_TRUE(story.contains("Settled by Ida: kept as it is")) << story.toStdString();
    EXPECT_TRUE(story.contains("The program also saw")) << story.toStdString();
    // The sibling's widths of the same years stand below.
    const auto& rows = window.review().years().rows();
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[1].name, "H01B");
    EXPECT_EQ(rows[0].rings.front().year, rows[1].rings.front().year);
    // The finding lies in the middle, at a scale at which single rings can be told.
    QCoreApplication::processEvents();
    const auto& view = window.review().viewer().view();
    EXPECT_NEAR(view.view().to_image(QRectF(view.viewport()->rect()).center()).x, 540.0, 2.0);
    EXPECT_GE(view.view().scale() * fake_step, 20.0) << "view pixels from ring to ring";
}

TEST_F(WindowReview, OneKeyPassesAndGoesOn) {
    key(Qt::Key_O);
    ASSERT_TRUE(shown(ReadingId{2}));
    EXPECT_EQ(kept(1).findings[0].verdict, Verdict::Passed);
    ASSERT_EQ(waiting(), 2U) << "H01B's finding, and H01A as a whole";
    key(Qt::Key_O);
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept(2).findings[0].verdict == Verdict::Passed; }));
    // What is left are the two readings themselves.
    ASSERT_TRUE(shown(ReadingId{1}) || shown(ReadingId{2}));
    key(Qt::Key_O);
    ASSERT_TRUE(QTest::qWaitFor([&] { return waiting() == 1; }));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.review().shown().has_value(); }));
    key(Qt::Key_O);
    ASSERT_TRUE(QTest::qWaitFor([&] { return waiting() == 0; }));
    EXPECT_EQ(kept(1).state, Reading::State::Passed);
    EXPECT_EQ(kept(2).state, Reading::State::Passed);
}

TEST_F(WindowReview, WhatIsReturnedWithACommentIsInTheTechniciansListAndComesBack) {
    key(Qt::Key_I);
    QTest::keyClicks(QApplication::focusWidget(), "look for a joined ring");
    key(Qt::Key_Return);
    key(Qt::Key_J);
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept(1).state == Reading::State::Returned; }));
    EXPECT_EQ(kept(1).findings[0].comment, "look for a joined ring");

    MainWindow technician{open_fake, appearance};
    open(technician, "Ida");
    EXPECT_TRUE(technician.windowTitle().startsWith("H01A")) << "the returned one comes first";
    EXPECT_EQ(technician.project_list().topLevelItem(0)->text(1), "returned");
    auto* findings = technician.findChild<FindingsList*>();
    ASSERT_EQ(findings->count(), 1);
    EXPECT_TRUE(findings->item(0)->text().contains("returned"));
    technician.editor().settle(1, Finding::State::CannotBeTold);
    technician.actions().at(ActionId::MarkDone)->trigger();
    ASSERT_TRUE(written(technician));
    // It is back in the supervisor's queue within a second, without a key.
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            return std::ranges::any_of(window.review().items(), [](const QueueItem& item) {
                return item.reading == ReadingId{1} && item.state == Finding::State::CannotBeTold;
            });
        },
        2000));
}

TEST_F(WindowReview, WhoMarkedAReadingDoesNotPassIt) {
    window.desk().set_person({"Ida", ""});
    key(Qt::Key_O);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.messages().text().contains("Ida marked this reading"); }));
    EXPECT_EQ(kept(1).findings[0].verdict, Verdict::None) << "nor a finding of it";
    window.desk().set_person({"Sue", ""});
    for (const std::int64_t id : {1, 2}) {
        ASSERT_TRUE(shown(ReadingId{id}));
        key(Qt::Key_O);
        ASSERT_TRUE(QTest::qWaitFor([&] { return kept(id).findings[0].verdict == Verdict::Passed; }));
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.review().shown().has_value(); }));
    ASSERT_TRUE(all_written());
    window.desk().set_person({"Ida", ""});
    key(Qt::Key_O);
    ASSERT_TRUE(all_written());
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.review().shown().has_value(); })) << "it is shown again";
    EXPECT_EQ(kept(1).state, Reading::State::Marked);
    EXPECT_EQ(kept(2).state, Reading::State::Marked);
}

TEST_F(WindowReview, AVerdictOnWhatWasChangedMeanwhileIsRefused) {
    {
        Project other = test::opened(file);
        const Reading seen = other.reading(ReadingId{1}).value();
        ASSERT_TRUE(other.edit(seen.id, annotate(seen, seen.boundaries[0].id, "new").value(), test::stamp_by("Ida"))
                        .has_value());
    }
    key(Qt::Key_O); // before this window has looked
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.messages().text().contains("was changed since it was shown"); }));
    EXPECT_EQ(kept(1).findings[0].verdict, Verdict::None);
    ASSERT_TRUE(shown(ReadingId{1}));
    ASSERT_TRUE(all_written());
    key(Qt::Key_O); // as it is now
    EXPECT_TRUE(QTest::qWaitFor([&] { return kept(1).findings[0].verdict == Verdict::Passed; }));
}

TEST_F(WindowReview, APlaceIsOpenedOnTheBench) {
    key(Qt::Key_G);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return window.view().isVisible() && window.control().model().core() != nullptr; }));
    const auto middle = [&] {
        const auto& view = window.view();
        return view.view().to_image(QRectF(view.viewport()->rect()).center()).x;
    };
    EXPECT_TRUE(QTest::qWaitFor([&] { return std::abs(middle() - 540.0) < 2.0; })) << middle();
    EXPECT_FALSE(window.actions().at(ActionId::PassQueued)->isEnabled());
    key(Qt::Key_2, Qt::ControlModifier);
    EXPECT_FALSE(window.actions().at(ActionId::Confirm)->isEnabled()) << "no key of the bench works unseen";
}

TEST_F(WindowReview, TheHistoryTellsWhoDidWhatAndBringsAReadingBack) {
    key(Qt::Key_H, Qt::ControlModifier);
    auto* history = window.findChild<HistoryView*>();
    ASSERT_NE(history, nullptr);
    ASSERT_TRUE(QTest::qWaitFor([&] { return history->list().topLevelItemCount() == 3; }));
    const auto text = [&](int row, int column) { return history->list().topLevelItem(row)->text(column); };
    EXPECT_EQ(text(0, 2), "Set the reading to marked");
    EXPECT_EQ(text(0, 1), "Ida");
    EXPECT_EQ(text(2, 2), "Propose a reading");
    EXPECT_FALSE(history->back().isEnabled()) << "the latest is what it is now";
    history->list().setCurrentItem(history->list().topLevelItem(2));
    ASSERT_TRUE(QTest::qWaitFor([&] {
        const auto* core = history->viewer().model().core();
        return core != nullptr && core->reading.findings[0].state == Finding::State::Open;
    }));
    ASSERT_TRUE(history->back().isEnabled());
    QTest::mouseClick(&history->back(), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return history->list().topLevelItemCount() == 4; }));
    EXPECT_TRUE(text(0, 2).startsWith("Bring back the reading of ")) << text(0, 2).toStdString();
    EXPECT_EQ(text(0, 1), "Sue");
    EXPECT_EQ(kept(1).findings[0].state, Finding::State::Open);
    EXPECT_EQ(kept(1).state, Reading::State::Marked);
}

} // namespace
} // namespace pithward::bench
