// A project that may only be read, in the real window: a supervisor looks at a colleague's folder.
#include "app/bench/actions/changing_actions.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/panels/reading_panel.h"
#include "app/bench/window/main_window.h"
#include "tests/project/fake_project.h"
#include "tests/support/only_reading.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QStatusBar>
#include <QTest>

namespace pithward::bench {
namespace {

TEST_F(FakeProject, ThatMayOnlyBeReadIsShownAndNotChanged) {
    const std::string bytes = test::bytes_of(file);
    Appearance appearance;
    {
        const test::OnlyReading only_reading(folder);
        if (!only_reading.rights.hold()) {
            GTEST_SKIP() << "whoever runs this may write to everything, or nobody can reach the folder";
        }
        MainWindow window{open_fake, appearance};
        open(window, "Ida");
        EXPECT_EQ(window.windowTitle(), "H01A, hill – Pithward");
        EXPECT_TRUE(window.messages().text().contains("it can be looked at, not changed"))
            << window.messages().text().toStdString();
        const auto labels = window.statusBar()->findChildren<QLabel*>();
        EXPECT_TRUE(std::ranges::any_of(labels, [](QLabel* label) { return label->text() == "Only to be looked at"; }));

        const Reading before = window.control().model().core()->reading;
        window.editor().take_up(before.boundaries[3].id);
        for (const ActionSpec& spec : action_table()) {
            const bool rests = !window.actions().at(spec.id)->isEnabled();
            EXPECT_TRUE(rests || !changes_something(spec.id)) << spec.text;
        }
        EXPECT_TRUE(window.actions().at(ActionId::NextBoundary)->isEnabled()) << "looking is no change";
        EXPECT_TRUE(window.actions().at(ActionId::ExportCsv)->isEnabled());
        auto* panel = window.findChild<ReadingPanel*>();
        ASSERT_NE(panel, nullptr);
        EXPECT_FALSE(panel->findChild<QLineEdit*>()->isEnabled()) << "the year";
        for (const QComboBox* box : panel->findChildren<QComboBox*>()) {
            EXPECT_FALSE(box->isEnabled());
        }
        // What comes by the mouse is refused before anything moves.
        window.editor().annotate("mine");
        ASSERT_TRUE(written(window));
        EXPECT_TRUE(window.messages().text().contains("can only be looked at"))
            << window.messages().text().toStdString();
        EXPECT_EQ(window.control().model().core()->reading, before);
        window.actions().at(ActionId::ShowReview)->trigger();
        EXPECT_FALSE(window.actions().at(ActionId::PassQueued)->isEnabled());
        window.actions().at(ActionId::ShowBench)->trigger();

        window.desk().open_core(record::CoreId{3});
        EXPECT_TRUE(QTest::qWaitFor([&] { return window.messages().text().contains("H02A has no reading"); }))
            << window.messages().text().toStdString();
    }
    EXPECT_EQ(test::bytes_of(file), bytes);
}

TEST_F(FakeProject, ThatMayBeWrittenToHasItsFieldsAndActions) {
    Appearance appearance;
    MainWindow window{open_fake, appearance};
    open(window, "Ida");
    EXPECT_TRUE(window.actions().at(ActionId::Confirm)->isEnabled());
    EXPECT_TRUE(window.findChild<ReadingPanel*>()->findChild<QLineEdit*>()->isEnabled());
}

} // namespace
} // namespace pithward::bench
