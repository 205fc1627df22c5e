// A core that goes on on another scan, joined in the real window as a person does it.
#include "app/bench/panels/core_list.h"
#include "app/bench/panels/findings_list.h"
#include "app/bench/panels/join_dialog.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "app/picture/legs.h"
#include "tests/app/fake_scan.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QDialogButtonBox>
#include <QPushButton>
#include <QTest>

namespace pithward::bench {
namespace {

/// Two scans of one core on the bench, each with 45 boundaries; the first is shown.
class WindowJoining : public testing::Test {
protected:
    void SetUp() override {
        window.resize(1400, 900);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
        window.control().open({"outer.png", "inner.png"});
        settle();
        window.control().step_scan(1);
        settle();
        window.control().step_scan(-1);
        settle();
        ASSERT_EQ(shown(), "outer.png");
        window.control().set_last_year(Year(2020));
        settle();
    }
    void settle() {
        ASSERT_TRUE(QTest::qWaitFor([&] { return !window.control().jobs().busy(); }));
        QTest::qWait(30);
    }
    [[nodiscard]] BenchModel& model() { return window.control().model(); }
    [[nodiscard]] std::string shown() { return model().scan()->opened->name(); }
    [[nodiscard]] const Reading& reading() { return model().core()->reading; }
    /// Opens the dialog, chooses how the two meet, and says yes.
    void choose(JoinDialog::How how) {
        window.actions().at(ActionId::GoOnElsewhere)->trigger();
        auto* dialog = window.findChild<JoinDialog*>();
        ASSERT_NE(dialog, nullptr);
        for (QComboBox* box : dialog->findChildren<QComboBox*>()) {
            const int index = box->findData(static_cast<int>(how));
            if (index >= 0) {
                box->setCurrentIndex(index);
            }
        }
        dialog->findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok)->click();
        settle();
    }
    void click_on_wood(ImagePoint at) {
        QWidget* canvas = window.view().viewport();
        const QPoint place = window.view().view().to_view(at).toPoint();
        QTest::mouseMove(canvas, place);
        QTest::mouseClick(canvas, Qt::LeftButton, {}, place);
        settle();
    }
    /// The thirtieth boundary here is the sixth there.
    void join_at_boundary() {
        window.editor().take_up(reading().boundaries[29].id);
        choose(JoinDialog::How::AtBoundary);
        ASSERT_EQ(shown(), "inner.png");
        EXPECT_TRUE(window.view().has_tool());
        click_on_wood(model().core()->reading.boundaries[5].at);
    }

    Appearance appearance;
    MainWindow window{open_fake, appearance};
};

TEST_F(WindowJoining, AtABoundaryThatBothShowNoRingIsLostOrGained) {
    join_at_boundary();
    EXPECT_EQ(reading().path.legs.size(), 2U);
    EXPECT_EQ(model().core()->series.rings.size(), 29U + 39U);
    EXPECT_EQ(model().core()->series.rings.front().year, Year(2020));
    EXPECT_EQ(model().core()->series.rings.back().year, Year(2020 - 67));
    EXPECT_EQ(shown(), "inner.png") << "where the person is at work";
    EXPECT_EQ(model().cores_on_shown().size(), 1U) << "the part there is no core of its own any more";

    window.actions().at(ActionId::Undo)->trigger();
    settle();
    EXPECT_EQ(model().core_at({1, 0})->reading.path.legs.size(), 1U);
    window.actions().at(ActionId::Redo)->trigger();
    settle();
    EXPECT_EQ(model().core_at({1, 0})->reading.path.legs.size(), 2U);
}

TEST_F(WindowJoining, WhatLiesOnTheOtherScanIsEditedThere) {
    join_at_boundary();
    const std::size_t rings = model().core()->series.rings.size();
    const Boundary last = reading().boundaries.back();
    window.editor().take_up(last.id);
    window.actions().at(ActionId::DeleteBoundary)->trigger();
    settle();
    EXPECT_EQ(model().core()->series.rings.size(), rings - 1);
    window.view().go_to(last.at);
    QTest::mouseMove(window.view().viewport(), window.view().view().to_view(last.at + ImagePoint{2, 3}).toPoint());
    window.actions().at(ActionId::AddBoundary)->trigger();
    ASSERT_TRUE(QTest::qWaitFor([&] { return model().core()->series.rings.size() == rings; }));
    EXPECT_EQ(reading().boundaries.back().at, last.at);
    EXPECT_EQ(reading().boundaries.back().leg, 1U);
}

TEST_F(WindowJoining, GoingToARingTurnsToItsScan) {
    join_at_boundary();
    emit window.plot().ring_chosen(3);
    settle();
    EXPECT_EQ(shown(), "outer.png");
    EXPECT_EQ(reading().path.legs.size(), 2U) << "the same core is present";
    emit window.plot().ring_chosen(60);
    settle();
    EXPECT_EQ(shown(), "inner.png");
    window.actions().at(ActionId::GoToBark)->trigger();
    settle();
    EXPECT_EQ(shown(), "outer.png");
}

TEST_F(WindowJoining, APlaceIsKnownByItsLegWhereItsPixelsAreOnBothScans) {
    join_at_boundary();
    EXPECT_EQ(picture::leg_at(reading(), reading().boundaries.front().at), 0U);
    EXPECT_EQ(picture::leg_at(reading(), reading().boundaries.back().at), 1U);
}

TEST_F(WindowJoining, OverACrackTheRingThatGoesOverItIsMeasuredInBothParts) {
    choose(JoinDialog::How::AtCrack);
    EXPECT_EQ(reading().path.legs.size(), 2U);
    EXPECT_EQ(model().core()->series.rings.size(), 44U + 1U + 44U);
    ASSERT_EQ(reading().breaks.size(), 1U);
    EXPECT_EQ(reading().breaks[0].kind, Break::Kind::Crack);
}

TEST_F(WindowJoining, EscapeLeavesAllAsItWas) {
    const Reading before = reading();
    window.editor().take_up(before.boundaries[29].id);
    choose(JoinDialog::How::AtBoundary);
    QTest::keyClick(&window.view(), Qt::Key_Escape);
    settle();
    EXPECT_FALSE(window.view().has_tool());
    EXPECT_EQ(model().core_at({1, 0})->reading, before);
}

} // namespace
} // namespace pithward::bench
