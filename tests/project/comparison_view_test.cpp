// Two readings of a core in the real window, held against each other on the same wood.
#include "app/bench/panels/message_bar.h"
#include "app/bench/window/main_window.h"
#include "app/review/comparison_view.h"
#include "app/review/core_viewer.h"
#include "app/review/history_view.h"
#include "tests/project/fake_project.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QTest>
#include <QTreeWidget>

namespace pithward::bench {
namespace {

class WindowComparison : public FakeProject {
protected:
    /// Udo has read H01A again and has overlooked its fifth boundary.
    void SetUp() override {
        FakeProject::SetUp();
        record::Project project = test::opened(file);
        Reading again = project.reading(ReadingId{1}).value();
        overlooked = again.boundaries[4].id;
        again.boundaries.erase(again.boundaries.begin() + 4);
        again.findings.clear();
        ASSERT_TRUE(project.add_reading(record::CoreId{1}, again, "Read again", test::stamp_by("Udo")).has_value());
    }
    ComparisonView* compare(MainWindow& window) {
        open(window, "Sue");
        window.actions().at(ActionId::CompareReadings)->trigger();
        return window.findChild<ComparisonView*>();
    }

    Appearance appearance;
    BoundaryId overlooked;
};

TEST_F(WindowComparison, NamesEachBoundaryThatOneReadingAloneHas) {
    MainWindow window{open_fake, appearance};
    ComparisonView* view = compare(window);
    ASSERT_NE(view, nullptr);
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->list().topLevelItemCount() == 1; }));
    EXPECT_EQ(view->list().topLevelItem(0)->text(0), "1");
    EXPECT_TRUE(view->choice(true).currentText().endsWith("accepted"));
    EXPECT_TRUE(view->words().contains("Rings that both have")) << view->words().toStdString();
    EXPECT_TRUE(view->words().contains("0.000 mm")) << view->words().toStdString();
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->viewer(false).model().core() != nullptr; }));
    const Reading& above = view->viewer(true).model().core()->reading;
    const Reading& below = view->viewer(false).model().core()->reading;
    EXPECT_TRUE(std::ranges::count(above.boundaries, overlooked, &Boundary::id) == 1);
    EXPECT_EQ(below.boundaries.size() + 1, above.boundaries.size());

    view->choice(true).setCurrentIndex(1); // the second against itself
    ASSERT_TRUE(QTest::qWaitFor([&] { return view->list().topLevelItemCount() == 0; }));
    EXPECT_TRUE(view->words().contains("100")) << view->words().toStdString();
}

TEST_F(WindowComparison, MayBeClosedBeforeItsAnswerCame) {
    MainWindow window{open_fake, appearance};
    ComparisonView* view = compare(window);
    ASSERT_NE(view, nullptr);
    delete view;
    window.actions().at(ActionId::ShowHistory)->trigger();
    delete window.findChild<HistoryView*>();
    EXPECT_TRUE(written(window));
}

TEST_F(WindowComparison, OneReadingHasNothingToBeHeldAgainst) {
    MainWindow window{open_fake, appearance};
    open(window, "Sue");
    window.desk().open_core(record::CoreId{2});
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.windowTitle().startsWith("H01B"); }));
    window.actions().at(ActionId::CompareReadings)->trigger();
    EXPECT_EQ(window.findChild<ComparisonView*>(), nullptr);
    EXPECT_TRUE(window.messages().text().contains("one reading")) << window.messages().text().toStdString();
}

} // namespace
} // namespace pithward::bench
