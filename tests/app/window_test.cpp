#include "app/bench/lanes/series_plot.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "tests/app/fake_scan.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QDropEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QSignalSpy>
#include <QSpinBox>
#include <QStatusBar>
#include <QTemporaryDir>
#include <QTest>
#include <QWheelEvent>
#include <cmath>

namespace pithward::bench {
namespace {

class WindowTest : public testing::Test {
protected:
    void SetUp() override {
        window.resize(1200, 800);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    }
    void open(const QStringList& paths) {
        window.control().open(paths);
        ASSERT_TRUE(QTest::qWaitFor([&] { return !window.control().jobs().busy(); }));
        QCoreApplication::processEvents();
    }
    QWidget* canvas() { return window.view().viewport(); }
    QPoint on_view(ImagePoint at) { return window.view().view().to_view(at).toPoint(); }
    void click(ImagePoint at) { QTest::mouseClick(canvas(), Qt::LeftButton, {}, on_view(at)); }
    void trigger(ActionId id) { window.actions().at(id)->trigger(); }
    const BenchModel& model() { return window.control().model(); }

    Appearance appearance;
    MainWindow window{open_fake, appearance};
};

TEST_F(WindowTest, AnEmptyBenchSaysWhatToDo) {
    EXPECT_FALSE(window.view().isVisible());
    EXPECT_TRUE(window.actions().at(ActionId::Open)->isEnabled());
    EXPECT_FALSE(window.actions().at(ActionId::DrawPath)->isEnabled());
}

TEST_F(WindowTest, AScanThatIsOpenedIsShown) {
    open({"a.png"});
    EXPECT_TRUE(window.view().isVisible());
    EXPECT_EQ(window.windowTitle(), "a.png – Pithward");
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.view().image().complete(); }));
    const QColor wood = canvas()->grab().toImage().pixelColor(on_view({1000, 190}));
    EXPECT_EQ(wood, QColor(200, 150, 90));
}

TEST_F(WindowTest, ADroppedScanIsOpened) {
    QMimeData files;
    files.setUrls({QUrl::fromLocalFile("/somewhere/b.png")});
    QDragEnterEvent enter({50, 50}, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&window, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(50, 50), Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&window, &drop);
    ASSERT_TRUE(QTest::qWaitFor([&] { return model().core() != nullptr; }));
    EXPECT_EQ(model().scan()->opened->path, "/somewhere/b.png");
}

TEST_F(WindowTest, AWrongFileGivesAMessageAndTheOldScanStays) {
    open({"a.png"});
    open({"wrong.png"});
    EXPECT_EQ(window.messages().text(), "wrong.png: this is not an image; give a TIFF, PNG or JPEG file");
    EXPECT_EQ(window.windowTitle(), "a.png – Pithward");
}

TEST_F(WindowTest, ABrokenScanIsToldOnceAndTakenOffAgain) {
    open({"a.png"});
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.view().image().complete(); }));
    open({"broken.tif"});
    EXPECT_EQ(window.messages().text(), "broken.tif: the image data is damaged or cut short; take an undamaged copy");
    EXPECT_EQ(window.windowTitle(), "a.png – Pithward");
    EXPECT_EQ(model().scans().size(), 1U);
    EXPECT_TRUE(window.actions().at(ActionId::ExportPicture)->isEnabled());
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.view().image().complete(); }));
}

TEST_F(WindowTest, WhateverTheKeysReachHasANameForThoseWhoHearTheWindow) {
    open({"a.png"});
    int reached = 0;
    for (QWidget* part : window.findChildren<QWidget*>()) {
        const bool inner = part->objectName().startsWith("qt_"); // what Qt puts into its own parts
        if (!part->isVisible() || !part->isEnabled() || inner || !(part->focusPolicy() & Qt::TabFocus)) {
            continue;
        }
        ++reached;
        QAccessibleInterface* told = QAccessible::queryAccessibleInterface(part);
        ASSERT_NE(told, nullptr) << part->metaObject()->className();
        EXPECT_FALSE(told->text(QAccessible::Name).isEmpty())
            << part->metaObject()->className() << " in " << part->parentWidget()->metaObject()->className();
    }
    EXPECT_GE(reached, 7) << "scan, plot, cores, findings and the three that a person sets";
}

TEST_F(WindowTest, OfManyWrongFilesEachIsTold) {
    open({"wrong1.png", "wrong2.png", "wrong3.png", "wrong4.png", "wrong5.png", "wrong6.png"});
    EXPECT_TRUE(window.messages().text().startsWith("2 more")) << window.messages().text().toStdString();
    auto* label = window.messages().findChild<QLabel*>();
    for (int i = 1; i <= 6; ++i) {
        EXPECT_TRUE(label->toolTip().contains(QString("wrong%1.png").arg(i)));
    }
}

TEST_F(WindowTest, ABrokenScanAloneLeavesAnEmptyBench) {
    open({"broken.tif"});
    EXPECT_EQ(model().scan(), nullptr);
    EXPECT_FALSE(window.view().isVisible());
    EXPECT_TRUE(window.messages().text().startsWith("broken.tif"));
}

TEST_F(WindowTest, TheStatusBarForgetsWhatWasWrittenBefore) {
    open({"a.png", "b.png"});
    const QTemporaryDir folder;
    auto* hint = window.statusBar()->findChild<QLabel*>();
    ASSERT_NE(hint, nullptr);
    window.control().export_shown(folder.filePath("a.csv"), export_formats().front());
    ASSERT_TRUE(QTest::qWaitFor([&] { return hint->text().startsWith("Written to"); }));
    trigger(ActionId::NextScan);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.control().jobs().busy(); }));
    QCoreApplication::processEvents();
    EXPECT_EQ(hint->text(), "");
}

TEST_F(WindowTest, AScanWithoutResolutionIsAskedAboutInTheWindow) {
    open({"untold.png"});
    auto* dpi = window.findChild<QSpinBox*>();
    ASSERT_NE(dpi, nullptr);
    ASSERT_TRUE(dpi->isVisible());
    dpi->setValue(2400);
    QTest::keyClick(dpi, Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([&] { return model().core() != nullptr; }));
    EXPECT_NEAR(model().scan()->calibration->dpi_x(), 2400, 1e-6);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !dpi->isVisible(); }));
}

TEST_F(WindowTest, TheWheelZoomsAtTheCursor) {
    open({"a.png"});
    const QPoint cursor = on_view({400, 120});
    const ImagePoint under = window.view().view().to_image(cursor);
    const double before = window.view().view().scale();
    QWheelEvent wheel(cursor, canvas()->mapToGlobal(cursor), {}, {0, 240}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(canvas(), &wheel);
    EXPECT_GT(window.view().view().scale(), 1.4 * before);
    const QPointF after = window.view().view().to_view(under);
    EXPECT_NEAR(after.x(), cursor.x(), 1.0);
    EXPECT_NEAR(after.y(), cursor.y(), 1.0);
}

TEST_F(WindowTest, ADragPansAndAClickDoesNot) {
    open({"a.png"});
    trigger(ActionId::ShowPixels);
    const ImagePoint before = window.view().view().centre();
    click({1000, 100});
    EXPECT_EQ(window.view().view().centre(), before);
    QTest::mousePress(canvas(), Qt::LeftButton, {}, {400, 100});
    QTest::mouseMove(canvas(), {460, 100});
    QTest::mouseRelease(canvas(), Qt::LeftButton, {}, {460, 100});
    EXPECT_NEAR(window.view().view().centre().x, before.x - 60, 1e-6);
}

TEST_F(WindowTest, APathIsDrawnByClicksAndMeasuredByEnter) {
    open({"a.png"});
    trigger(ActionId::DrawPath);
    ASSERT_TRUE(window.view().has_tool());
    click({200, 100});
    click({1000, 102});
    QTest::keyClick(&window.view(), Qt::Key_Return);
    EXPECT_FALSE(window.view().has_tool());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.control().jobs().busy(); }));
    const ImagePoint start = model().core()->reading.path.legs[0].points.front();
    EXPECT_NEAR(start.x, 200, 2.0);
}

TEST_F(WindowTest, EscapeInTheMiddleOfAPathLeavesEverythingAsItWas) {
    open({"a.png"});
    const picture::MeasuredCore before = *model().core();
    trigger(ActionId::DrawPath);
    click({200, 100});
    click({1000, 102});
    QTest::keyClick(&window.view(), Qt::Key_Escape);
    EXPECT_FALSE(window.view().has_tool());
    EXPECT_FALSE(window.control().jobs().busy());
    EXPECT_EQ(*model().core(), before);
}

TEST_F(WindowTest, TheRightButtonTakesPointsBackAndThenPutsTheToolAway) {
    open({"a.png"});
    trigger(ActionId::DrawPath);
    click({200, 100});
    QTest::mouseClick(canvas(), Qt::RightButton, {}, {300, 100});
    EXPECT_TRUE(window.view().has_tool());
    QTest::mouseClick(canvas(), Qt::RightButton, {}, {300, 100});
    EXPECT_FALSE(window.view().has_tool());
}

TEST_F(WindowTest, AnotherScanPutsTheToolAway) {
    open({"a.png", "b.png"});
    trigger(ActionId::DrawPath);
    click({200, 100});
    trigger(ActionId::NextScan);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.control().jobs().busy(); }));
    QCoreApplication::processEvents();
    EXPECT_FALSE(window.view().has_tool());
}

TEST_F(WindowTest, HoldingHHidesEveryMark) {
    open({"a.png"});
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.view().image().complete(); }));
    const QImage with = canvas()->grab().toImage();
    QTest::keyPress(&window.view(), Qt::Key_H);
    EXPECT_TRUE(window.view().marks_hidden());
    const QImage without = canvas()->grab().toImage();
    EXPECT_NE(with, without);
    for (int x = 200; x < 1800; x += 7) {
        EXPECT_EQ(without.pixelColor(on_view({double(x), 60})), QColor(200, 150, 90)) << x;
    }
    QTest::keyRelease(&window.view(), Qt::Key_H);
    EXPECT_EQ(canvas()->grab().toImage(), with);
}

TEST_F(WindowTest, TheRingUnderTheCursorIsPickedInThePlot) {
    open({"a.png"});
    QTest::mouseMove(canvas(), on_view({100 + 5.5 * fake_step, 100}));
    EXPECT_EQ(window.plot().picked_ring(), 5);
    QTest::mouseMove(canvas(), {5, 5});
    EXPECT_EQ(window.plot().picked_ring(), 0);
}

TEST_F(WindowTest, ARingChosenInThePlotComesToTheMiddleOfTheScan) {
    open({"a.png"});
    emit window.plot().ring_chosen(30);
    EXPECT_NEAR(window.view().view().centre().x, 100 + 30.5 * fake_step, 1e-6);
}

TEST_F(WindowTest, TheViewIsTurnedByAnyAngleAndLevelledAgain) {
    open({"a.png"});
    const QPointF middle(canvas()->rect().center());
    QWheelEvent wheel(middle, canvas()->mapToGlobal(middle), {}, {0, 7 * 120}, Qt::NoButton, Qt::ControlModifier,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(canvas(), &wheel);
    EXPECT_NEAR(window.view().view().turn_deg(), 7.0, 1e-9);
    trigger(ActionId::LevelCore); // the fake core lies level on its scan
    EXPECT_NEAR(std::remainder(window.view().view().turn_deg(), 360.0), 0.0, 1e-9);
}

TEST_F(WindowTest, TheYearIsTyped) {
    open({"a.png"});
    trigger(ActionId::SetYear);
    auto* field = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(field, nullptr);
    QTest::keyClicks(field, "2021");
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(model().core()->reading.last_year, Year(2021));
}

TEST_F(WindowTest, NoTwoActionsShareAKey) {
    std::map<QString, QString> seen;
    for (const ActionSpec& spec : action_table()) {
        for (const QString& key : QString(spec.keys).split(' ', Qt::SkipEmptyParts)) {
            EXPECT_FALSE(seen.contains(key)) << key.toStdString() << " " << spec.text;
            EXPECT_FALSE(QKeySequence(key).isEmpty()) << spec.text;
            seen[key] = spec.text;
        }
        EXPECT_FALSE(help_of(spec).isEmpty());
    }
}

} // namespace
} // namespace pithward::bench
