// The site in the real window: dated beside it, slips accepted and turned down by keys, the way to the wood.
#include "app/bench/panels/findings_list.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/scan_view/scan_view.h"
#include "app/bench/window/main_window.h"
#include "app/site/site_bands.h"
#include "app/site/site_dating.h"
#include "app/site/site_page.h"
#include "app/site/slip_panel.h"
#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/reading_edits.h"
#include "tests/app/fake_scan.h"
#include "tests/site/site_project.h"
#include "tests/support/only_reading.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QListWidget>
#include <QTest>

namespace pithward::bench {
namespace {

class WindowSite : public SiteProject {
protected:
    void open() {
        window.resize(1400, 900);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
        window.control().model().set_person("Sue");
        window.control().open({QString::fromStdString(file)});
        ASSERT_TRUE(QTest::qWaitFor([&] { return window.control().model().core() != nullptr; }));
        key(Qt::Key_3, Qt::ControlModifier);
    }
    void open_dated() {
        open();
        ASSERT_TRUE(dated());
    }
    bool dated() {
        return QTest::qWaitFor([&] { return window.desk().waiting() == 0 && site().has_dating() && !site().busy(); });
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus != nullptr ? focus : &window, key, with);
        QCoreApplication::processEvents();
    }
    SitePage& site() { return window.site(); }
    const SiteDating& dating() { return *site().work().dating(); }
    /// The row of a reading in the list.
    int row(ReadingId id) {
        const auto& lines = dating().lines;
        return static_cast<int>(
            std::ranges::find_if(lines, [&](const SiteLine& one) { return dating().core(one).reading.id == id; }) -
            lines.begin());
    }
    void choose(ReadingId id) { site().list().setCurrentRow(row(id)); }
    double middle_of_bench() {
        const auto& view = window.view();
        return view.view().to_image(QRectF(view.viewport()->rect()).center()).x;
    }

    Appearance appearance;
    MainWindow window{open_fake, appearance};
};

TEST_F(WindowSite, TheWorstSeriesIsShownFirstWithWhatTheOthersSay) {
    open_dated();
    EXPECT_EQ(window.windowTitle(), "Site, slope – Pithward");
    ASSERT_EQ(site().list().count(), 8);
    ASSERT_NE(site().slip().slip(), nullptr);
    EXPECT_TRUE(site().slip().words().contains(" sure of it"));
    EXPECT_GT(site().slip().places().count(), 0);
    EXPECT_TRUE(site().list().item(0)->text().contains("1921 to 2020") ||
                site().list().item(0)->text().contains("1922 to 2020") ||
                site().list().item(0)->text().contains("1920 to 2020"));
    EXPECT_FALSE(window.actions().at(ActionId::Confirm)->isEnabled()) << "no key of the bench works unseen";
    EXPECT_FALSE(window.actions().at(ActionId::PassQueued)->isEnabled());
}

TEST_F(WindowSite, OneKeyAcceptsAndTheSiteIsDatedAnew) {
    open_dated();
    choose(merged);
    EXPECT_EQ(site().slip().accept_words(), "Put the boundary of 1969 in (T)");
    const auto before = site().work().dating();
    key(Qt::Key_T);
    ASSERT_TRUE(QTest::qWaitFor([&] { return site().work().dating() != before && !site().busy(); }));
    EXPECT_EQ(kept(merged).boundaries.size(), 101U);
    EXPECT_EQ(kept(merged).findings.at(0).kind, FindingKind::Slip);
    EXPECT_EQ(kept(merged).findings.at(0).state, Finding::State::ProposalTaken);
    EXPECT_EQ(site().list().currentRow(), row(merged)) << "the series stays the one that is shown";
    EXPECT_EQ(site().slip().slip(), nullptr);
    EXPECT_FALSE(window.actions().at(ActionId::TakeProposal)->isEnabled());
}

TEST_F(WindowSite, YearsThatFitAllOfASeriesAreTakenByTheSameKey) {
    const ReadingId sound{8};
    {
        record::Project other = test::opened(file);
        const Reading seen = other.reading(sound).value();
        ASSERT_TRUE(other.edit(sound, shift_years(seen, -1).value(), test::stamp_by("Ida")).has_value());
    }
    open_dated();
    choose(sound);
    EXPECT_EQ(site().slip().accept_words(), "Add 1 to all of its years (T)");
    key(Qt::Key_K);
    EXPECT_EQ(kept(sound).last_year, Year(2019)) << "nothing was taken";
    key(Qt::Key_T);
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept(sound).last_year == Year(2020); }));
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return dated() && dating().dated(dating().lines[row(sound)])->whole_shift == 0; }));
    EXPECT_EQ(site().list().currentRow(), row(sound)) << "the series stays the one that is shown";
    EXPECT_FALSE(window.actions().at(ActionId::TakeProposal)->isEnabled());
}

TEST_F(WindowSite, NotSoIsRememberedAndNothingElseIsChanged) {
    open_dated();
    choose(split);
    const Reading before = kept(split);
    key(Qt::Key_K);
    ASSERT_TRUE(QTest::qWaitFor([&] { return dated() && dating().settled(dating().lines[row(split)], 0); }));
    EXPECT_EQ(kept(split).boundaries.size(), before.boundaries.size());
    EXPECT_EQ(kept(split).findings.back().state, Finding::State::KeptAsItIs);
    EXPECT_TRUE(site().list().item(row(split))->data(Qt::AccessibleDescriptionRole).toString().contains("not so"));
}

TEST_F(WindowSite, TheWoodIsShownWithTheProposalReadyToTake) {
    open_dated();
    choose(split);
    const ImagePoint at = site().slip().place()->place.at;
    key(Qt::Key_G);
    auto* findings = window.findChild<FindingsList*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.view().isVisible() && findings->currentRow() == 1; }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return std::abs(middle_of_bench() - at.x) < 2.0; })) << middle_of_bench();
    EXPECT_TRUE(findings->item(1)->text().contains("Slip")) << findings->item(1)->text().toStdString();
    key(Qt::Key_T);
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept(split).findings.back().state == Finding::State::ProposalTaken; }));
    EXPECT_EQ(kept(split).boundaries.size(), 101U);
    key(Qt::Key_3, Qt::ControlModifier);
    ASSERT_TRUE(QTest::qWaitFor([&] { return dated() && dating().dated(dating().lines[row(split)])->slips.empty(); }));
}

TEST_F(WindowSite, TheWoodOfWhatIsSettledIsShownWithoutAnotherFinding) {
    open_dated();
    choose(lost);
    key(Qt::Key_U);
    ASSERT_TRUE(QTest::qWaitFor([&] { return dated() && dating().settled(dating().lines[row(lost)], 0); }));
    const ImagePoint at = site().slip().place()->place.at;
    key(Qt::Key_G);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.view().isVisible() && std::abs(middle_of_bench() - at.x) < 2.0; }))
        << middle_of_bench();
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.desk().waiting() == 0; }));
    EXPECT_EQ(kept(lost).findings.size(), 1U);
    EXPECT_EQ(kept(lost).findings[0].state, Finding::State::CannotBeTold);
    EXPECT_TRUE(kept(lost).absent_rings.empty());
}

TEST_F(WindowSite, AYearOfTheSeriesIsOpenedOnTheBench) {
    open_dated();
    choose(ReadingId{8});
    site().series().setFocus();
    key(Qt::Key_End);
    key(Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_EQ(site().years().pointed(), 2010);
    EXPECT_TRUE(site().series().pointed_in_words().contains("2010"))
        << site().series().pointed_in_words().toStdString();
    key(Qt::Key_Return);
    const double x = kept(ReadingId{8}).boundaries.at(10).at.x;
    EXPECT_TRUE(QTest::qWaitFor([&] { return window.view().isVisible() && std::abs(middle_of_bench() - x) < 2.0; }))
        << middle_of_bench();
}

TEST_F(WindowSite, KeysAndWheelComeCloser) {
    open_dated();
    const int all = site().years().last() - site().years().first();
    window.actions().at(ActionId::ZoomIn)->trigger();
    const int fewer = site().years().last() - site().years().first();
    EXPECT_LT(fewer, all);
    window.actions().at(ActionId::ShowAll)->trigger();
    EXPECT_EQ(site().years().last() - site().years().first(), all);
    window.actions().at(ActionId::NextFinding)->trigger();
    const int first = site().list().currentRow();
    window.actions().at(ActionId::NextFinding)->trigger();
    EXPECT_NE(site().list().currentRow(), first) << "the next slip is of another series";
}

TEST_F(WindowSite, AnEditByAnotherWindowIsDatedAnewAndAStaleAnswerIsRefused) {
    open_dated();
    choose(merged);
    {
        record::Project other = test::opened(file);
        const Reading seen = other.reading(merged).value();
        ASSERT_TRUE(other.edit(seen.id, annotate(seen, seen.boundaries[0].id, "new").value(), test::stamp_by("Ida"))
                        .has_value());
    }
    key(Qt::Key_T); // before this window has looked
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.messages().text().contains("was changed since it was dated"); }));
    EXPECT_TRUE(kept(merged).findings.empty());
    ASSERT_TRUE(QTest::qWaitFor([&] { return dated() && dating().core(dating().lines[row(merged)]).revision > 0; }));
    key(Qt::Key_T); // as it is now
    EXPECT_TRUE(QTest::qWaitFor([&] { return kept(merged).findings.size() == 1; }));
}

TEST_F(WindowSite, WhatMayOnlyBeReadIsDatedAndNothingIsChanged) {
    const test::OnlyReading only_reading(folder);
    if (!only_reading.rights.hold()) {
        GTEST_SKIP() << "whoever runs this may write to everything, or nobody can reach the folder";
    }
    open_dated();
    choose(merged);
    ASSERT_NE(site().slip().place(), nullptr);
    const ImagePoint at = site().slip().place()->place.at;
    EXPECT_FALSE(window.actions().at(ActionId::TakeProposal)->isEnabled());
    EXPECT_FALSE(window.actions().at(ActionId::KeepAsItIs)->isEnabled());
    key(Qt::Key_T);
    key(Qt::Key_G);
    EXPECT_TRUE(QTest::qWaitFor([&] { return window.view().isVisible() && std::abs(middle_of_bench() - at.x) < 2.0; }))
        << "the wood can be looked at";
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.desk().waiting() == 0; }));
    EXPECT_TRUE(kept(merged).findings.empty());
    EXPECT_EQ(kept(merged).boundaries.size(), 100U);
}

TEST_F(WindowSite, WorkThatIsStoppedLeavesNothing) {
    open();
    ASSERT_TRUE(QTest::qWaitFor([&] { return site().busy() || site().has_dating(); }));
    if (site().busy()) {
        window.actions().at(ActionId::Cancel)->trigger();
        EXPECT_FALSE(site().busy());
        EXPECT_FALSE(site().has_dating());
        EXPECT_EQ(site().words_in_place(), "The site is not dated yet.");
        site().refresh();
    }
    EXPECT_TRUE(dated());
}

TEST_F(WindowSite, TooFewSeriesAreToldWithWhatIsNeeded) {
    make(2);
    open();
    ASSERT_TRUE(QTest::qWaitFor([&] { return site().words_in_place().contains("at least three series"); }))
        << site().words_in_place().toStdString();
    EXPECT_TRUE(site().words_in_place().contains("This project has 2"));
    EXPECT_FALSE(window.actions().at(ActionId::TakeProposal)->isEnabled());
    EXPECT_FALSE(window.actions().at(ActionId::ZoomIn)->isEnabled());
}

} // namespace
} // namespace pithward::bench
