// A project that may only be read, in the real window: a supervisor looks at a colleague's folder.
#include "app/bench/panels/message_bar.h"
#include "app/bench/window/main_window.h"
#include "tests/project/fake_project.h"
#include "tests/support/only_reading.h"

#include <gtest/gtest.h>

#include <QLabel>
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
        window.actions().at(ActionId::Confirm)->trigger();
        ASSERT_TRUE(written(window));
        EXPECT_TRUE(window.messages().text().startsWith("Taken back")) << window.messages().text().toStdString();
        EXPECT_TRUE(QTest::qWaitFor([&] { return window.control().model().core()->reading == before; }));

        window.desk().open_core(record::CoreId{3});
        EXPECT_TRUE(QTest::qWaitFor([&] { return window.messages().text().contains("H02A has no reading"); }))
            << window.messages().text().toStdString();
    }
    EXPECT_EQ(test::bytes_of(file), bytes);
}

} // namespace
} // namespace pithward::bench
