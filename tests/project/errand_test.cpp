// The whole way of a new user through the window: a project from a sheet and scans, measured, reported.
#include "app/bench/look/appearance.h"
#include "app/bench/model/opened_scan.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/window/main_window.h"
#include "app/progress/progress_page.h"
#include "app/project/detail_field.h"
#include "app/project/missing_list.h"
#include "app/project/new_project_dialog.h"
#include "app/project/report_dialog.h"
#include "app/project/settle_dialog.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <QTreeWidget>
#include <fstream>

namespace pithward::bench {
namespace {

namespace fs = std::filesystem;

class ErrandTest : public testing::Test {
protected:
    ErrandTest() {
        fs::create_directory(site);
        fs::copy_file(fs::path(PITHWARD_DEMO) / "HW01A.jpg", site / "HW01A.jpg");
        std::ofstream(site / "sheet.csv") << "site,tree,core,species,wood,date_cored,status,outer,latitude\n"
                                             "HW,HW01,HW01A,Pinus sp.,conifer,2023-10-04,living,complete,47.5\n"
                                             "HW,HW02,HW02A,Pinus sp.,conifer,2023-10-04,living,complete,47.5\n";
        window.errand().use_program(PITHWARD_PROGRAM);
        window.resize(1200, 800);
        window.show();
        (void)QTest::qWaitForWindowExposed(&window);
    }

    void make_project() {
        window.actions().at(ActionId::NewProject)->trigger();
        auto* dialog = window.findChild<NewProjectDialog*>();
        ASSERT_NE(dialog, nullptr);
        dialog->sheet().setText(QString::fromStdString((site / "sheet.csv").string()));
        EXPECT_EQ(dialog->scans().text().toStdString(), site.string()) << "proposed";
        EXPECT_EQ(dialog->project().text().toStdString(), (site / "site.pithward").string());
        for (QPushButton* button : dialog->findChildren<QPushButton*>()) {
            if (button->text() == "&Make the project") {
                EXPECT_TRUE(button->isEnabled());
                button->click();
            }
        }
        ASSERT_TRUE(QTest::qWaitFor([&] { return window.desk().is_open(); }, 20'000));
    }

    /// Values of 1900 to 2023 that mean nothing.
    void write_climate() const {
        std::ofstream out(site / "climate.csv");
        out << "year,month,value\n";
        for (int year = 1900; year < 2024; ++year) {
            for (int month = 1; month <= 12; ++month) {
                out << year << ',' << month << ',' << (year * 7 + month * 13) % 17 << '\n';
            }
        }
    }

    test::TemporaryFolder folder;
    fs::path site = folder.file("site");
    Appearance appearance;
    MainWindow window{[](const std::string& path) { return open_scan(path); }, appearance};
};

TEST_F(ErrandTest, AScanThatMatchesNoCoreIsShownWhenTheProjectIsMade) {
    fs::copy_file(fs::path(PITHWARD_DEMO) / "HW01A.jpg", site / "img_7.jpg");
    make_project();
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.findChild<SettleDialog*>() != nullptr; }));
    auto* dialog = window.findChild<SettleDialog*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->scans().count() == 2; }));
    EXPECT_TRUE(dialog->scans().item(0)->text().contains("img_7.jpg")) << dialog->scans().item(0)->text().toStdString();
    EXPECT_TRUE(dialog->cores().item(0)->text().contains("HW02A"));
}

TEST_F(ErrandTest, FromASheetAndScansToAReport) {
    make_project();
    EXPECT_EQ(window.findChild<SettleDialog*>(), nullptr) << "a core alone without a scan may not be scanned yet";
    ASSERT_EQ(window.desk().overview().cores.size(), 2U);
    const auto* words = window.messages().findChild<QLabel*>();
    ASSERT_NE(words, nullptr);
    EXPECT_TRUE(words->text().contains("HW02A")) << "a core without a scan is told: " << words->text().toStdString();

    window.actions().at(ActionId::MeasureAll)->trigger();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.errand().busy(); }, 60'000));
    EXPECT_TRUE(QTest::qWaitFor([&] { return window.desk().overview().cores.front().accepted.has_value(); }, 10'000))
        << "what another process wrote is seen";

    window.actions().at(ActionId::ShowProgress)->trigger();
    const auto& progress = window.progress();
    const record::CoreId measured = window.desk().overview().cores.front().id;
    EXPECT_TRUE(QTest::qWaitFor([&] { return progress.picture(measured).width() > 100; }, 20'000))
        << "the wood is shown";
    ASSERT_EQ(progress.model().rows().size(), 2U);
    EXPECT_NE(progress.model().rows()[0].progress.next, progress::Step::Measure);
    EXPECT_EQ(progress.model().rows()[1].progress.next, progress::Step::FindScan);

    window.actions().at(ActionId::WriteReport)->trigger();
    auto* dialog = window.findChild<ReportDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->file().text().toStdString(), (site / "site.pdf").string()) << "proposed";
    const fs::path report = folder.file("report.html");
    dialog->file().setText(QString::fromStdString(report.string()));
    write_climate();
    dialog->climate().setText(QString::fromStdString((site / "climate.csv").string()));
    dialog->years().setText("8");
    dialog->years_sd().setText("3");
    ASSERT_TRUE(dialog->write().isEnabled());
    dialog->write().click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.errand().busy(); }, 60'000));
    std::ifstream in(report);
    const std::string html{std::istreambuf_iterator<char>(in), {}};
    EXPECT_NE(html.find("HW01A"), std::string::npos);
    EXPECT_NE(html.find("climate.csv"), std::string::npos) << "the climate series was taken";
    EXPECT_NE(html.find("8 \xC2\xB1 3"), std::string::npos) << "and the years to the height";
}

TEST_F(ErrandTest, WhatThePackageLacksIsAListThatLeadsToWhereItIsFilledIn) {
    make_project();
    window.actions().at(ActionId::MeasureAll)->trigger();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.errand().busy(); }, 60'000));
    window.actions().at(ActionId::WritePackage)->trigger();
    auto* dialog = window.findChild<QFileDialog*>();
    ASSERT_NE(dialog, nullptr);
    emit dialog->fileSelected(QString::fromStdString(folder.file("hw.zip")));
    dialog->close();
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.findChild<MissingList*>() != nullptr; }, 60'000));
    auto* missing = window.findChild<MissingList*>();
    EXPECT_TRUE(fs::exists(folder.file("hw.zip")));
    const auto found = missing->list().findItems("Northernmost_Latitude", Qt::MatchStartsWith);
    EXPECT_TRUE(found.isEmpty()) << "the sheet tells it";
    const auto collector = missing->list().findItems("Investigators", Qt::MatchStartsWith);
    ASSERT_EQ(collector.size(), 1);
    EXPECT_EQ(collector.front()->text(1), "needed");
    EXPECT_EQ(missing->list().topLevelItem(0)->text(1), "needed") << "what is needed comes first";
    missing->list().setCurrentItem(collector.front());
    ASSERT_TRUE(missing->there().isEnabled());
    missing->there().click();
    ASSERT_NE(window.focusWidget(), nullptr);
    const auto* field = qobject_cast<DetailField*>(window.focusWidget()->parentWidget());
    ASSERT_NE(field, nullptr);
    EXPECT_EQ(std::string(field->column().name), "collector");
    EXPECT_FALSE(window.messages().text().contains("missing")) << window.messages().text().toStdString();
}

TEST(MissingThings, AreTakenFromTheLinesOfTheCommand) {
    const MissingThing latitude =
        missing_thing("needed: Northernmost_Latitude, the latitude; fill in latitude on the field sheet");
    EXPECT_TRUE(latitude.needed);
    EXPECT_EQ(latitude.what, "Northernmost_Latitude, the latitude");
    EXPECT_EQ(latitude.column, "latitude");
    const MissingThing undated =
        missing_thing("customary: core HW03B has no calendar years and is left out of the series: the field sheet does "
                      "not tell date_cored, latitude; fill it in on the field sheet, or set the year by hand");
    EXPECT_FALSE(undated.needed);
    EXPECT_EQ(undated.core, "HW03B");
    EXPECT_EQ(undated.column, "date_cored");
    const MissingThing grant = missing_thing("customary: Grant; write it into the template file before sending it");
    EXPECT_TRUE(grant.core.isEmpty() && grant.column.isEmpty());
    EXPECT_EQ(missing_thing("").what, "");
}

TEST(ReportDialogs, TellWhatIsWrongBeforeTheWork) {
    const test::TemporaryFolder folder;
    ReportDialog dialog(QString::fromStdString(folder.file("hill.pithward")));
    EXPECT_TRUE(dialog.write().isEnabled()) << "Return is enough";
    dialog.file().setText(QString::fromStdString(folder.file("hill.doc")));
    EXPECT_FALSE(dialog.write().isEnabled());
    dialog.file().setText("/nowhere/hill.pdf");
    EXPECT_FALSE(dialog.write().isEnabled());
    dialog.file().setText(QString::fromStdString(folder.file("hill.html")));
    dialog.climate().setText("/nowhere/climate.csv");
    EXPECT_FALSE(dialog.write().isEnabled());
    dialog.climate().clear();
    dialog.years().setText("900");
    EXPECT_FALSE(dialog.write().isEnabled());
    dialog.years().setText("9");
    EXPECT_TRUE(dialog.write().isEnabled());
}

TEST_F(ErrandTest, WhatIsStoppedLeavesNothingHalfDone) {
    make_project();
    window.errand().run("A report",
                        {"report", QString::fromStdString((site / "site.pithward").string()), "--out",
                         QString::fromStdString(folder.file("r.pdf"))},
                        0, [] { ADD_FAILURE() << "it was stopped"; });
    EXPECT_FALSE(window.errand().run("Another", {"--version"}, 0, {})) << "one at a time";
    window.actions().at(ActionId::Cancel)->trigger();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !window.errand().busy(); }, 10'000));
    EXPECT_FALSE(fs::exists(folder.file("r.pdf")));
}

TEST_F(ErrandTest, AProgramThatIsNotThereIsTold) {
    window.errand().use_program("/nowhere/pithward");
    window.errand().run("Nothing", {"--version"}, 0, [] { ADD_FAILURE(); });
    EXPECT_TRUE(QTest::qWaitFor([&] { return window.messages().isVisible(); }, 5'000));
    EXPECT_FALSE(window.errand().busy());
}

} // namespace
} // namespace pithward::bench
