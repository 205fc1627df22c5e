#include "app/bench/panels/message_bar.h"
#include "app/bench/panels/pith_panel.h"
#include "tests/app/bench_at_fake.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <algorithm>

namespace pithward::bench {
namespace {

/// The fake core's straight boundaries end at x = 1900 and tell nothing of the pith.
class PithByHandTest : public BenchAtFake {
protected:
    void SetUp() override { open("a.png", {1800, 100}); }
    const Document& document() { return *model().document(); }
    bool comes_to_rest() {
        return QTest::qWaitFor([&] { return !window.pith().busy(); }) && (QCoreApplication::processEvents(), true);
    }
    void place_by_key(ImagePoint at) {
        point(at);
        QTest::keyClick(&window.view(), Qt::Key_Z);
        ASSERT_TRUE(comes_to_rest());
    }
    QString panel_text() {
        QString text;
        for (const QLabel* label : window.findChild<PithPanel*>()->findChildren<QLabel*>()) {
            text += label->text() + '\n';
        }
        return text;
    }
};

TEST_F(PithByHandTest, StraightRingsTellNoPithAndTheFindingSaysWhy) {
    EXPECT_FALSE(reading().pith);
    const auto finding = std::ranges::find(reading().findings, FindingKind::Pith, &Finding::kind);
    ASSERT_NE(finding, reading().findings.end());
    EXPECT_TRUE(panel_text().contains(QString::fromStdString(finding->reason))) << panel_text().toStdString();
    EXPECT_TRUE(document().log().empty()) << "what was judged when the core was read is no edit";
}

TEST_F(PithByHandTest, ZPutsThePithThereAndUndoTakesItAway) {
    place_by_key({1980, 110});
    ASSERT_TRUE(reading().pith);
    EXPECT_EQ(reading().pith->source, Pith::Source::Hand);
    EXPECT_NEAR(reading().pith->at.x, 1980, 1.0);
    EXPECT_NEAR(reading().pith->distance.value(), std::hypot(80, 10) / 47.24, 0.05);
    EXPECT_GT(reading().pith->missing_rings, 0);
    EXPECT_TRUE(panel_text().contains("placed by hand")) << panel_text().toStdString();
    ASSERT_EQ(document().log().size(), 1U);
    QTest::keyClick(&window.view(), Qt::Key_Z, Qt::ControlModifier);
    ASSERT_TRUE(comes_to_rest());
    EXPECT_EQ(reading().pith, before.pith);
    EXPECT_EQ(reading().findings, before.findings);
}

TEST_F(PithByHandTest, ItsMarkCanBeDragged) {
    place_by_key({1980, 110});
    drag({1980, 110}, {1960, 90});
    ASSERT_TRUE(comes_to_rest());
    EXPECT_NEAR(reading().pith->at.x, 1960, 1.0);
    EXPECT_NEAR(reading().pith->at.y, 90, 1.0);
}

TEST_F(PithByHandTest, TheArcOfTheInnermostRingCanBeBent) {
    place_by_key({1985, 100});
    const auto shape = pith_shape(*window.control().model().core(), "a.png", 0.0);
    ASSERT_TRUE(shape);
    ASSERT_EQ(shape->arcs.size(), 2U);
    const ImagePoint handle = shape->arcs[1].handle;
    drag(handle, handle + ImagePoint{-30, 0}); // flatter: the centre goes further off
    ASSERT_TRUE(comes_to_rest());
    EXPECT_GT(reading().pith->distance.value(), 85.0 / 47.24 + 0.1);
    EXPECT_NEAR(reading().pith->at.y, 100, 1.0) << "square to the ring where it crosses the path";
}

TEST_F(PithByHandTest, WhatCannotBeIsToldAndNothingChanges) {
    place_by_key({1700, 100}); // on the bark's side of the innermost boundary
    EXPECT_EQ(reading(), before);
    EXPECT_TRUE(window.messages().isVisible());
}

TEST_F(PithByHandTest, WhenABoundaryGoesTheDistanceFollowsAndUndoGoesAllTheWayBack) {
    place_by_key({1980, 110});
    const auto placed = reading().pith;
    window.editor().take_up(reading().boundaries.back().id);
    window.editor().remove();
    QCoreApplication::processEvents();
    ASSERT_TRUE(comes_to_rest());
    EXPECT_GT(reading().pith->distance, placed->distance);
    EXPECT_EQ(reading().pith->at, placed->at);
    EXPECT_EQ(document().log().back().who, "Pithward");
    window.editor().undo();
    QCoreApplication::processEvents();
    ASSERT_TRUE(comes_to_rest());
    EXPECT_EQ(reading().pith, placed);
    window.editor().undo();
    QCoreApplication::processEvents();
    ASSERT_TRUE(comes_to_rest());
    EXPECT_FALSE(reading().pith);
    EXPECT_EQ(reading().boundaries, before.boundaries);
}

TEST_F(PithByHandTest, ByTheRingsAgain) {
    place_by_key({1980, 110});
    window.actions().at(ActionId::JudgePith)->trigger();
    ASSERT_TRUE(comes_to_rest());
    EXPECT_FALSE(reading().pith) << "straight rings tell nothing";
}

} // namespace
} // namespace pithward::bench
