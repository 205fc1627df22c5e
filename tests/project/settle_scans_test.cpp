// Scans that match no core, before a person in the real window: given by keyboard and mouse, told, taken back.
#include "app/bench/panels/message_bar.h"
#include "app/project/settle_dialog.h"
#include "app/project/settle_picture.h"
#include "libcore/record/project.h"
#include "tests/project/fake_project.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>
#include <fstream>

namespace pithward::bench {
namespace {

using record::CoreId;
using record::Project;

constexpr int of_item = Qt::UserRole;
const CoreId not_read{3};     // H02A, which has a scan
const CoreId without_scan{4}; // H02B

class SettleScans : public FakeProject {
protected:
    void SetUp() override {
        FakeProject::SetUp();
        std::ofstream(folder.file("scans/stray.png")) << "the pixels of a stray";
        open(window, "Ida");
        window.actions().at(ActionId::SettleScans)->trigger();
        dialog = window.findChild<SettleDialog*>();
        ASSERT_NE(dialog, nullptr);
        ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->cores().count() == 4; }));
    }
    void add_stray() {
        dialog->settling().add({QString::fromStdString(folder.file("scans/stray.png"))});
        ASSERT_TRUE(QTest::qWaitFor([&] { return scan_row("scans/stray.png") >= 0; }));
    }
    int scan_row(const QString& scan) { return row_of(dialog->scans(), scan); }
    int core_row(CoreId id) { return row_of(dialog->cores(), QVariant::fromValue(id.value)); }
    static int row_of(const QListWidget& list, const QVariant& what) {
        for (int row = 0; row < list.count(); ++row) {
            if (list.item(row)->data(of_item) == what) {
                return row;
            }
        }
        return -1;
    }
    void choose(const QString& scan, CoreId id) {
        dialog->scans().setCurrentRow(scan_row(scan));
        dialog->cores().setCurrentRow(core_row(id));
    }
    bool done() {
        return QTest::qWaitFor([&] { return window.desk().waiting() == 0; }) && written(window) &&
               QTest::qWaitFor([&] { return window.desk().waiting() == 0; });
    }
    Core kept(CoreId id) {
        return test::opened(file, Project::Access::Read)
            .cores()
            .value()
            .at(static_cast<std::size_t>(id.value) - 1)
            .core;
    }

    Appearance appearance;
    MainWindow window{open_fake, appearance};
    SettleDialog* dialog = nullptr;
};

TEST_F(SettleScans, WhatIsOpenStandsFirst) {
    EXPECT_EQ(core_row(without_scan), 0);
    EXPECT_TRUE(dialog->cores().item(0)->text().contains("no scan"));
    add_stray();
    EXPECT_EQ(scan_row("scans/stray.png"), 0);
    EXPECT_TRUE(dialog->scans().item(0)->text().contains("no core"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->said().text().contains("Scans without a core: 1"); }));
    // A core that is read keeps its scan.
    EXPECT_FALSE(dialog->cores().item(core_row(CoreId{1}))->flags() & Qt::ItemIsEnabled);
    dialog->settling().give(CoreId{1}, "scans/stray.png", std::nullopt);
    ASSERT_TRUE(done());
    EXPECT_EQ(kept(CoreId{1}).scan, "scans/H01A.png");
}

TEST_F(SettleScans, TheKeyboardGivesAScanAndTakesItBack) {
    add_stray();
    choose("scans/stray.png", without_scan);
    dialog->cores().setFocus();
    QTest::keyClick(&dialog->cores(), Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept(without_scan).scan == "scans/stray.png"; }));
    ASSERT_TRUE(done());
    EXPECT_TRUE(QTest::qWaitFor([&] { return dialog->said().text().contains("Every core has its scan"); }))
        << dialog->said().text().toStdString();
    EXPECT_FALSE(window.messages().text().contains("somebody else")) << "one Return is one step";
    const auto last = test::opened(file, Project::Access::Read).history(without_scan).value().back();
    EXPECT_EQ(last.who, "Ida");
    EXPECT_EQ(last.label, "H02B gets the scan scans/stray.png");
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->back().isEnabled(); }));
    QTest::mouseClick(&dialog->back(), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept(without_scan).scan.empty(); }));
}

TEST_F(SettleScans, ANumberOrAClickTellsWhichCoreOfAScanIsMeant) {
    choose("scans/H02A.png", without_scan);
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->give().isEnabled(); }));
    dialog->number().setValue(2);
    dialog->give().click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept(without_scan).scan == "scans/H02A.png"; }));
    ASSERT_TRUE(done());
    EXPECT_EQ(kept(without_scan).others.at("scan_place"), "2");
    EXPECT_TRUE(QTest::qWaitFor([&] { return dialog->scans().item(0)->text().contains("which is which? H02A, H02B"); }))
        << "the other has no place yet";
    choose("scans/H02A.png", not_read);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog->picture().grab().isNull() && dialog->give().isEnabled(); }));
    // The picture has the scan's shape: 2000 by 200 pixels, as wide as there is room.
    ASSERT_TRUE(QTest::qWaitFor([&] {
        const QImage shown = dialog->picture().grab().toImage();
        return shown.pixelColor(shown.width() / 2, shown.height() / 2) != shown.pixelColor(shown.width() / 2, 2);
    }));
    const QPoint middle(dialog->picture().width() / 2, dialog->picture().height() / 2);
    QTest::mouseClick(&dialog->picture(), Qt::LeftButton, Qt::NoModifier, middle);
    dialog->give().click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept(not_read).others.contains("scan_place"); }));
    ASSERT_TRUE(done());
    const auto place = field::scan_place_of(kept(not_read));
    ASSERT_TRUE(place && std::holds_alternative<ImagePoint>(*place));
    EXPECT_NEAR(std::get<ImagePoint>(*place).x, 1000.0, 10.0);
    EXPECT_NEAR(std::get<ImagePoint>(*place).y, 100.0, 10.0);
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->take().isEnabled(); }));
    dialog->take().click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept(not_read).scan.empty(); }));
    EXPECT_FALSE(kept(not_read).others.contains("scan_place"));
}

TEST_F(SettleScans, AScanOutsideIsNotTaken) {
    const test::TemporaryFolder elsewhere;
    dialog->settling().add({QString::fromStdString(elsewhere.write("other.png", "pixels"))});
    EXPECT_TRUE(dialog->said().text().contains("outside of the project's folder"));
    ASSERT_TRUE(done());
    EXPECT_EQ(test::opened(file, Project::Access::Read).scans().value().size(), 3U);
}

} // namespace
} // namespace pithward::bench
