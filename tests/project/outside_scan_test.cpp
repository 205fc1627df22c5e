// A project whose scan leads outside of its folder, in the real window: it is shown and asked about.
#include "app/bench/panels/message_bar.h"
#include "app/bench/window/main_window.h"
#include "tests/project/fake_project.h"

#include <gtest/gtest.h>

#include <QMessageBox>
#include <QPushButton>
#include <QTest>
#include <filesystem>
#include <fstream>

namespace pithward::bench {
namespace {

namespace fs = std::filesystem;

class OutsideScan : public FakeProject {
protected:
    void SetUp() override {
        FakeProject::SetUp();
        std::ofstream(elsewhere.file("scan.png")) << "the pixels of H02A";
        std::ofstream(elsewhere.file("secret.png")) << "nobody's business";
        link_to("scan.png");
        open(window, "Ida");
    }
    /// The scan of the third core, H02A.
    void link_to(const char* name) {
        fs::remove(folder.file("scans/H02A.png"));
        fs::create_symlink(elsewhere.file(name), folder.file("scans/H02A.png"));
    }
    /// The question that is shown; null where none comes.
    QMessageBox* question() {
        QMessageBox* box = nullptr;
        (void)QTest::qWaitFor([&] {
            box = window.findChild<QMessageBox*>();
            return box != nullptr;
        });
        return box;
    }
    void answer(QMessageBox::StandardButton button) {
        QMessageBox* box = question();
        ASSERT_NE(box, nullptr);
        QTest::mouseClick(box->button(button), Qt::LeftButton);
        ASSERT_TRUE(QTest::qWaitFor([&] { return window.findChild<QMessageBox*>() == nullptr; }));
    }
    bool h02a_is_shown() {
        return QTest::qWaitFor([&] { return window.windowTitle().startsWith("H02A"); });
    }

    test::TemporaryFolder elsewhere;
    Appearance appearance;
    MainWindow window{open_fake, appearance};
};

TEST_F(OutsideScan, IsShownWithWhereItLeadsAndNotReadUnlessSaid) {
    window.desk().open_core(record::CoreId{3});
    QMessageBox* box = question();
    ASSERT_NE(box, nullptr);
    EXPECT_TRUE(box->text().contains("scans/H02A.png")) << box->text().toStdString();
    EXPECT_TRUE(box->text().contains("/scan.png")) << "where it really leads to";
    EXPECT_EQ(box->defaultButton(), box->button(QMessageBox::No));
    answer(QMessageBox::No);
    EXPECT_TRUE(window.messages().text().contains("was not read")) << window.messages().text().toStdString();
    EXPECT_TRUE(window.windowTitle().startsWith("H01A"));
    EXPECT_EQ(window.control().model().scans().size(), 1U);
}

TEST_F(OutsideScan, AYesHoldsForThatPlaceAndNoOther) {
    window.desk().open_core(record::CoreId{3});
    answer(QMessageBox::Yes);
    ASSERT_TRUE(h02a_is_shown());
    ASSERT_TRUE(written(window));
    // Once more: not asked again.
    window.control().model().remove_scan(window.control().model().scan()->id);
    window.desk().open_core(record::CoreId{3});
    ASSERT_TRUE(h02a_is_shown());
    EXPECT_EQ(window.findChild<QMessageBox*>(), nullptr);
    // The link leads elsewhere now.
    window.control().model().remove_scan(window.control().model().scan()->id);
    link_to("secret.png");
    window.desk().open_core(record::CoreId{3});
    QMessageBox* box = question();
    ASSERT_NE(box, nullptr);
    EXPECT_TRUE(box->text().contains("/secret.png"));
    answer(QMessageBox::No);
}

} // namespace
} // namespace pithward::bench
