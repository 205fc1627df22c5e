#include "app/bench/lanes/series_plot.h"
#include "app/bench/lanes/strip_lane.h"
#include "app/bench/panels/message_bar.h"
#include "app/picture/nearest_mark.h"
#include "tests/app/bench_at_fake.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLineEdit>
#include <numbers>

namespace pithward::bench {
namespace {

class WindowEdits : public BenchAtFake {
protected:
    void SetUp() override { open("a.png", {400, 100}); }
    const RingSeries& series() { return model().core()->series; }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(&window.view(), key, with);
        settle();
    }
    const Boundary& nth(std::size_t i) { return reading().boundaries.at(i); }
};

TEST_F(WindowEdits, AClickTakesABoundaryUpAndCConfirmsItAndGoesOn) {
    click({380, 70});
    ASSERT_NE(window.editor().in_hand(), nullptr);
    EXPECT_NEAR(window.editor().in_hand()->at.x, 380, 1e-9);
    point({50, 10});
    key(Qt::Key_C);
    EXPECT_EQ(nth(6).confirmation, Confirmation::LookedAt);
    EXPECT_NEAR(window.editor().in_hand()->at.x, 420, 1e-9);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(reading(), before);
}

TEST_F(WindowEdits, ACoreThatWasDrawnIsTakenAwayByUndoAndBroughtBackByRedo) {
    window.control().read_drawn_path({{100, 190}, {1500, 190}});
    ASSERT_TRUE(QTest::qWaitFor([&] { return model().scan()->cores.size() == 2; }));
    settle();
    const Reading drawn = reading();
    window.control().set_last_year(Year(2020));
    settle();
    trigger(ActionId::Undo);
    EXPECT_EQ(reading(), drawn) << "its edits go first";
    trigger(ActionId::Undo);
    ASSERT_EQ(model().scan()->cores.size(), 1U);
    EXPECT_EQ(reading(), before);
    EXPECT_FALSE(window.actions().at(ActionId::Undo)->isEnabled()) << "what the program found is not taken away";
    trigger(ActionId::Redo);
    EXPECT_EQ(reading(), drawn);
    trigger(ActionId::Redo);
    EXPECT_EQ(reading().last_year, Year(2020));
}

TEST_F(WindowEdits, ANewEditEndsTheRedoOfADrawnCore) {
    window.control().read_drawn_path({{100, 190}, {1500, 190}});
    ASSERT_TRUE(QTest::qWaitFor([&] { return model().scan()->cores.size() == 2; }));
    settle();
    trigger(ActionId::Undo);
    window.control().set_last_year(Year(2020));
    settle();
    EXPECT_FALSE(window.actions().at(ActionId::Redo)->isEnabled());
}

TEST_F(WindowEdits, AfterTheYearTheKeysAreTheWoodsAgain) {
    trigger(ActionId::SetYear);
    QWidget* field = QApplication::focusWidget();
    ASSERT_NE(qobject_cast<QLineEdit*>(field), nullptr);
    QTest::keyClicks(field, "2020");
    QTest::keyClick(field, Qt::Key_Return);
    settle();
    EXPECT_EQ(reading().last_year, Year(2020));
    EXPECT_TRUE(window.view().hasFocus());
    trigger(ActionId::SetYear);
    QTest::keyClicks(field, "1999");
    QTest::keyClick(field, Qt::Key_Escape);
    settle();
    EXPECT_EQ(reading().last_year, Year(2020)) << "Escape gives up what was typed";
    EXPECT_TRUE(window.view().hasFocus());
}

TEST_F(WindowEdits, DeleteTakesTheBoundaryInHandAwayAndUndoBringsItBack) {
    click({380, 70});
    key(Qt::Key_Delete);
    EXPECT_EQ(reading().boundaries.size() + 1, before.boundaries.size());
    EXPECT_EQ(window.editor().in_hand(), nullptr);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(reading(), before);
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(reading().boundaries.size() + 1, before.boundaries.size());
}

TEST_F(WindowEdits, ADoubleClickAddsWhereTheWoodShowsABoundary) {
    click({380, 70});
    key(Qt::Key_Delete);
    QTest::mouseDClick(canvas(), Qt::LeftButton, {}, on_view({383, 110}));
    ASSERT_TRUE(QTest::qWaitFor([&] { return reading().boundaries.size() == before.boundaries.size(); }));
    settle();
    EXPECT_NEAR(nth(6).at.x, 380, 1e-9); // from the evidence, not from the click
    EXPECT_EQ(nth(6).origin, Origin::Analyst);
    EXPECT_EQ(nth(6).confirmation, Confirmation::LookedAt);
    EXPECT_FALSE(nth(6).sd_assumed);
    ASSERT_NE(window.editor().in_hand(), nullptr);
    EXPECT_EQ(window.editor().in_hand()->id, nth(6).id);
}

TEST_F(WindowEdits, WhereTheWoodShowsNothingItIsSaidAndShiftAddsFreely) {
    point({400, 110});
    key(Qt::Key_A);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.messages().text().contains("shows no boundary"); }));
    EXPECT_EQ(reading(), before);
    point({400, 110});
    key(Qt::Key_A, Qt::ShiftModifier);
    ASSERT_EQ(reading().boundaries.size(), before.boundaries.size() + 1);
    EXPECT_NEAR(nth(7).at.x, 400, 1.0);
    EXPECT_NEAR(nth(7).at.y, 100, 1e-9); // on the path
    EXPECT_TRUE(nth(7).sd_assumed);
}

TEST_F(WindowEdits, ADragMovesABoundaryAndIsOneEdit) {
    drag({380, 80}, {390, 85});
    EXPECT_NEAR(nth(6).at.x, 390, 1.0);
    EXPECT_NEAR(nth(6).at.y, 100, 1e-9);
    EXPECT_EQ(model().document()->log().size(), 1U);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(reading(), before);
}

TEST_F(WindowEdits, ADragByTheEndOfItsLineTurnsABoundary) {
    drag({380, 50}, {390, 50});
    EXPECT_EQ(nth(6).at, before.boundaries[6].at);
    EXPECT_NEAR(nth(6).tangent, std::numbers::pi / 2.0 + std::atan2(10.0, 50.0), 0.03);
    click({420, 70});
    key(Qt::Key_BracketRight);
    EXPECT_NEAR(nth(7).tangent - before.boundaries[7].tangent, std::numbers::pi / 180.0, 1e-9);
}

TEST_F(WindowEdits, EscapeInTheMiddleOfADragLeavesTheBoundary) {
    point({380, 80});
    QTest::mousePress(canvas(), Qt::LeftButton, {}, on_view({380, 80}));
    QTest::mouseMove(canvas(), on_view({395, 80}));
    key(Qt::Key_Escape);
    QTest::mouseRelease(canvas(), Qt::LeftButton, {}, on_view({395, 80}));
    settle();
    EXPECT_EQ(reading(), before);
}

TEST_F(WindowEdits, ABoundaryThatWouldPassItsNeighbourStaysAndTheReasonIsTold) {
    drag({380, 80}, {450, 80});
    EXPECT_EQ(reading(), before);
    EXPECT_FALSE(window.messages().text().isEmpty());
}

TEST_F(WindowEdits, AFalseRingBecomesACandidateAndCanBeTakenBack) {
    click({380, 70});
    key(Qt::Key_F);
    EXPECT_EQ(reading().boundaries.size() + 1, before.boundaries.size());
    ASSERT_EQ(reading().not_annual.size(), before.not_annual.size() + 1);
    point({380, 50});
    key(Qt::Key_F, Qt::ShiftModifier);
    EXPECT_EQ(reading().boundaries.size(), before.boundaries.size());
    EXPECT_NEAR(nth(6).at.x, 380, 1e-9);
}

TEST_F(WindowEdits, AnAbsentRingIsAYearOfWidthZero) {
    window.control().set_last_year(Year(2020));
    click({380, 70});
    key(Qt::Key_L);
    const auto absent = std::ranges::find(series().rings, true, &Ring::absent);
    ASSERT_NE(absent, series().rings.end());
    EXPECT_EQ(series().rings.size(), before.boundaries.size()); // one more ring than before
    EXPECT_EQ(absent->year, Year(2014));                        // 2020 less the six rings outside
    key(Qt::Key_L, Qt::ShiftModifier);
    EXPECT_TRUE(reading().absent_rings.empty());
}

TEST_F(WindowEdits, AFindingIsOpenedThenSettledByOneKey) {
    key(Qt::Key_K); // shows it first: nothing is settled unseen
    EXPECT_EQ(reading().findings[0].state, Finding::State::Open);
    key(Qt::Key_K);
    EXPECT_EQ(reading().findings[0].state, Finding::State::KeptAsItIs);
    EXPECT_FALSE(window.actions().at(ActionId::KeepAsItIs)->isEnabled());
}

TEST_F(WindowEdits, ConfirmingAllSureOnesIsRecordedAsInBulk) {
    key(Qt::Key_C, Qt::ShiftModifier);
    for (const Boundary& boundary : reading().boundaries) {
        EXPECT_EQ(boundary.confirmation, Confirmation::InBulk);
    }
    EXPECT_EQ(model().document()->log().size(), 1U);
}

TEST_F(WindowEdits, ACrackIsMarkedByItsTwoEdges) {
    key(Qt::Key_B);
    ASSERT_TRUE(window.view().has_tool());
    click({410, 100});
    click({395, 100}); // the other way round
    ASSERT_EQ(reading().breaks.size(), 1U);
    EXPECT_LT(reading().breaks[0].from.x, reading().breaks[0].to.x);
    EXPECT_EQ(reading().breaks[0].kind, Break::Kind::Crack);
}

TEST_F(WindowEdits, TheStripShowsWhatTheScanShowsAndARingIsMarkedInAll) {
    StripLane& strip = window.strip();
    ASSERT_TRUE(QTest::qWaitFor([&] { return strip.complete(); }));
    const ImagePoint in_ring{420 + 10, 100}; // the eighth boundary is at 420
    const QPoint on_strip(on_view(in_ring).x(), 30);
    QTest::mouseMove(&strip, on_strip);
    EXPECT_EQ(strip.picked_ring(), 8);
    EXPECT_EQ(window.plot().picked_ring(), 8);
    point({380 + 10, 100});
    EXPECT_EQ(strip.picked_ring(), 7);
}

TEST_F(WindowEdits, ABendIsPutInDraggedAndTakenAwayAndNoRingIsLost) {
    const auto rings = series().rings;
    point({410, 100});
    key(Qt::Key_V);
    ASSERT_EQ(reading().path.legs[0].points.size(), 3U);
    drag({410, 100}, {410, 120});
    EXPECT_NEAR(reading().path.legs[0].points[1].y, 120, 1.0);
    EXPECT_EQ(series().rings.size(), rings.size());
    EXPECT_EQ(model().document()->log().size(), 2U);
    for (const Boundary& boundary : reading().boundaries) {
        EXPECT_NEAR(boundary.at.x, before.boundaries[static_cast<std::size_t>(&boundary - &nth(0))].at.x, 1e-6);
    }
    point(reading().path.legs[0].points[1]);
    key(Qt::Key_V, Qt::ShiftModifier);
    EXPECT_EQ(reading().path.legs[0].points.size(), 2U);
    for (int i = 0; i < 3; ++i) {
        key(Qt::Key_Z, Qt::ControlModifier);
    }
    EXPECT_EQ(reading(), before);
}

TEST_F(WindowEdits, TheEndOfThePathIsDraggedInAndOutAgainAndYearsStay) {
    window.control().set_last_year(Year(2020));
    window.view().go_to({200, 100});
    drag({100, 100}, {160, 100}); // past the first boundary, at 140
    EXPECT_EQ(reading().boundaries.size() + 1, before.boundaries.size());
    EXPECT_EQ(reading().last_year, Year(2019));
    drag({160, 100}, {100, 100});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.control().jobs().busy(); }));
    settle();
    EXPECT_EQ(reading().boundaries.size(), before.boundaries.size());
    EXPECT_EQ(reading().last_year, Year(2020));
}

TEST_F(WindowEdits, ThePathStepsAsideAlongTheBoundaryInHandAndTheCountStays) {
    window.control().set_last_year(Year(2020));
    const auto rings = series().rings;
    click({380, 70});
    point({384, 130});
    key(Qt::Key_S);
    ASSERT_EQ(reading().path.legs.size(), 2U);
    EXPECT_NEAR(reading().path.legs[1].points.front().y, 130, 1.0);
    ASSERT_EQ(series().rings.size(), rings.size());
    EXPECT_EQ(series().rings.back().year, rings.back().year);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(reading().path, before.path);
}

TEST_F(WindowEdits, EverythingIsUndoneAndRedoneOneByOne) {
    window.control().set_last_year(Year(2020));
    click({300, 70});
    key(Qt::Key_C);
    drag({380, 80}, {390, 85});
    click({420, 70});
    key(Qt::Key_Delete);
    click({460, 70});
    key(Qt::Key_L);
    trigger(ActionId::SwapEnds);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.control().jobs().busy(); }));
    settle();
    const Reading after = reading();
    int undone = 0;
    while (window.actions().at(ActionId::Undo)->isEnabled() && undone < 20) {
        trigger(ActionId::Undo);
        ++undone;
    }
    EXPECT_EQ(undone, 6);
    EXPECT_EQ(reading(), before);
    while (window.actions().at(ActionId::Redo)->isEnabled() && undone > -20) {
        trigger(ActionId::Redo);
        --undone;
    }
    EXPECT_EQ(undone, 0);
    EXPECT_EQ(reading(), after);
}

} // namespace
} // namespace pithward::bench
