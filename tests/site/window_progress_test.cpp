// The page of progress in the real window: what each core waits for, and the way there by keys.
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "app/progress/progress_page.h"
#include "app/review/review_page.h"
#include "app/site/site_page.h"
#include "libcore/edit/boundary_edits.h"
#include "libcore/review/verdicts.h"
#include "tests/app/fake_scan.h"
#include "tests/site/site_project.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <filesystem>

namespace pithward::bench {
namespace {

using progress::HowFar;
using progress::Stage;
using progress::Step;

class WindowProgress : public SiteProject {
protected:
    void open() {
        window.resize(1400, 900);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
        window.control().model().set_person("Sue");
        window.control().open({QString::fromStdString(file)});
        ASSERT_TRUE(QTest::qWaitFor([&] { return window.control().model().core() != nullptr; }));
        key(Qt::Key_4, Qt::ControlModifier);
        ASSERT_TRUE(page().isVisible());
        ASSERT_TRUE(dated());
    }
    bool dated() {
        return QTest::qWaitFor(
            [&] { return window.desk().waiting() == 0 && window.site().has_dating() && !window.site().busy(); });
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus != nullptr ? focus : &window, key, with);
        QCoreApplication::processEvents();
    }
    ProgressPage& page() { return window.progress(); }
    const progress::CoreProgress& of(ReadingId id) {
        return page().model().rows()[static_cast<std::size_t>(id.value - 1)].progress;
    }
    QString chosen() { return page().table().currentIndex().siblingAtColumn(ProgressModel::Name).data().toString(); }
    void choose(const QString& core) {
        page().table().setFocus();
        for (int row = 0; row < 8 && chosen() != core; ++row) {
            page().table().setCurrentIndex(page().table().model()->index(row, 0));
        }
        ASSERT_EQ(chosen(), core);
    }
    /// Another window confirms all of a reading, and marks it where that is wanted.
    void confirm(ReadingId id, bool and_mark) {
        record::Project other = test::opened(file);
        const auto stamp = test::stamp_by("Ida");
        ASSERT_TRUE(other.edit(id, confirm_above(other.reading(id).value(), 0.0), stamp).has_value());
        if (and_mark) {
            ASSERT_TRUE(other.edit(id, review::mark(other.reading(id).value(), "Ida").value(), stamp).has_value());
        }
    }

    Appearance appearance;
    MainWindow window{open_fake, appearance};
};

TEST_F(WindowProgress, EachCoreStandsThereWithWhatItWaitsFor) {
    open();
    EXPECT_EQ(window.windowTitle(), "Progress, slope – Pithward");
    ASSERT_EQ(page().table().model()->rowCount(), 8);
    EXPECT_EQ(of(merged).at(Stage::Scanned), HowFar::Done);
    EXPECT_EQ(of(merged).at(Stage::Dated), HowFar::WantsLook) << "a ring is missing by the others";
    EXPECT_EQ(of(merged).next, Step::Confirm);
    EXPECT_EQ(of(split).next, Step::Settle);
    EXPECT_EQ(of(ReadingId{8}).at(Stage::Dated), HowFar::Done);
    EXPECT_EQ(page().site().next, Step::Settle);
    EXPECT_EQ(page().site_button().text(), "Settle findings");
    choose("T11a");
    EXPECT_TRUE(page().story().contains("open findings: 1")) << page().story().toStdString();
    EXPECT_TRUE(page().story().contains("rings missing or counted twice: 1")) << page().story().toStdString();
    EXPECT_FALSE(window.actions().at(ActionId::Confirm)->isEnabled()) << "no key of the bench works unseen";
    EXPECT_TRUE(window.actions().at(ActionId::ShowHistory)->isEnabled());
}

TEST_F(WindowProgress, ReturnLeadsToTheFirstOpenFindingOnTheBench) {
    open();
    choose("T11a");
    const ImagePoint at = kept(split).findings.front().at;
    key(Qt::Key_Return);
    const auto middle = [&] {
        const auto& view = window.view();
        return view.view().to_image(QRectF(view.viewport()->rect()).center()).x;
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.view().isVisible() && std::abs(middle() - at.x) < 2.0; }));
    EXPECT_EQ(window.desk().present(), record::CoreId{2});
    key(Qt::Key_4, Qt::ControlModifier);
    EXPECT_EQ(chosen(), "T11a") << "the core stays the one that was chosen";
}

TEST_F(WindowProgress, WhatIsConfirmedElsewhereMovesOnToItsYearsThenToTheReview) {
    open();
    choose("T10a");
    confirm(merged, false);
    ASSERT_TRUE(QTest::qWaitFor([&] { return of(merged).next == Step::Date; })) << "followed without a key";
    key(Qt::Key_Return);
    ASSERT_TRUE(window.site().isVisible());
    ASSERT_TRUE(dated());
    EXPECT_EQ(window.site().core(), record::CoreId{1});

    const ReadingId sound{8};
    confirm(sound, true);
    confirm(ReadingId{7}, true);
    key(Qt::Key_4, Qt::ControlModifier);
    ASSERT_TRUE(QTest::qWaitFor([&] { return of(sound).next == Step::Review; }));
    choose("T17a");
    key(Qt::Key_Return);
    ASSERT_TRUE(window.review().isVisible());
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return window.review().shown() && window.review().shown()->reading().id == sound; }));
}

TEST_F(WindowProgress, IsSortedByKeysAsByAClick) {
    open();
    page().order().setCurrentIndex(page().order().findText("What is next"));
    const auto first = [&] { return page().table().model()->index(0, ProgressModel::Name).data().toString(); };
    EXPECT_EQ(first(), "T11a") << "findings come before what is to be confirmed";
    page().order().setCurrentIndex(page().order().findText("Field sheet"));
    EXPECT_EQ(first(), "T10a");
}

TEST_F(WindowProgress, AScanThatIsGoneIsTold) {
    std::filesystem::remove(folder.file("scans/T16a.png"));
    open();
    ASSERT_TRUE(QTest::qWaitFor([&] { return of(ReadingId{7}).at(Stage::Scanned) == HowFar::WantsLook; }));
    choose("T16a");
    EXPECT_TRUE(page().story().contains("its scan is not in its place")) << page().story().toStdString();
}

} // namespace
} // namespace pithward::bench
