// The whole way of a new user through the window: a project from a sheet and scans, measured, reported.
#include "app/bench/look/appearance.h"
#include "app/bench/model/opened_scan.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/window/main_window.h"
#include "app/project/new_project_dialog.h"
#include "app/project/settle_dialog.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <fstream>

namespace pithward::bench {
namespace {

namespace fs = std::filesystem;

class ErrandTest : public testing::Test {
protected:
    ErrandTest() {
        fs::create_directory(site);
        fs::copy_file(fs::path(PITHWARD_DEMO) / "HW01A.jpg", site / "HW01A.jpg");
        std::ofstream(site / "sheet.csv") << "site,tree,core,species,wood,date_cored,outer\n"
                                             "HW,HW01,HW01A,Pinus sp.,conifer,2023-10-04,complete\n"
                                             "HW,HW02,HW02A,Pinus sp.,conifer,2023-10-04,complete\n";
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

    window.actions().at(ActionId::WriteReport)->trigger();
    auto* dialog = window.findChild<QFileDialog*>();
    ASSERT_NE(dialog, nullptr);
    const fs::path report = folder.file("report.html");
    emit dialog->fileSelected(QString::fromStdString(report.string()));
    dialog->close();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.errand().busy(); }, 60'000));
    std::ifstream in(report);
    const std::string html{std::istreambuf_iterator<char>(in), {}};
    EXPECT_NE(html.find("HW01A"), std::string::npos);
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
