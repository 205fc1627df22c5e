#pragma once

#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "tests/app/fake_scan.h"

#include <gtest/gtest.h>

#include <QTest>

namespace pithward::bench {

/// A person at the window with one fake core: boundaries at x = 140, 180, ... on y = 100.
class BenchAtFake : public testing::Test {
protected:
    void open(const QString& path, ImagePoint look_at) {
        window.resize(1400, 900);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
        window.control().open({path});
        ASSERT_TRUE(QTest::qWaitFor([&] { return !window.control().jobs().busy() && model().core() != nullptr; }));
        settle();
        trigger(ActionId::ShowPixels);
        window.view().go_to(look_at);
        before = reading();
    }
    static void settle() { QCoreApplication::processEvents(); }
    const BenchModel& model() { return window.control().model(); }
    const Reading& reading() { return model().core()->reading; }
    QWidget* canvas() { return window.view().viewport(); }
    QPoint on_view(ImagePoint at) { return window.view().view().to_view(at).toPoint(); }
    void trigger(ActionId id) {
        window.actions().at(id)->trigger();
        settle();
    }
    void point(ImagePoint at) {
        // A mouse that is there already, from the test before, tells of no move.
        QTest::mouseMove(canvas(), on_view(at + ImagePoint{-20, -20}));
        QTest::mouseMove(canvas(), on_view(at));
    }
    void click(ImagePoint at) {
        point(at);
        QTest::mouseClick(canvas(), Qt::LeftButton, {}, on_view(at));
        settle();
    }
    void drag(ImagePoint from, ImagePoint to) {
        point(from);
        QTest::mousePress(canvas(), Qt::LeftButton, {}, on_view(from));
        QTest::mouseMove(canvas(), on_view((from + to) * 0.5));
        QTest::mouseMove(canvas(), on_view(to));
        QTest::mouseRelease(canvas(), Qt::LeftButton, {}, on_view(to));
        settle();
    }

    Appearance appearance;
    MainWindow window{open_fake, appearance};
    Reading before; ///< As it was opened.
};

} // namespace pithward::bench
