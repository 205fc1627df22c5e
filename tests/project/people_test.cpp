// Who works here, in the real window: a name and a role, seen in the history.
#include "app/bench/window/main_window.h"
#include "app/project/person_dialog.h"
#include "app/review/history_view.h"
#include "libcore/edit/reading_edits.h"
#include "tests/project/fake_project.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QDialogButtonBox>
#include <QPushButton>
#include <QTest>
#include <QTreeWidget>

namespace pithward::bench {
namespace {

class People : public FakeProject {
protected:
    void SetUp() override {
        FakeProject::SetUp();
        open(window, "Ida");
    }
    PersonDialog* dialog() {
        window.actions().at(ActionId::SayWho)->trigger();
        return window.findChild<PersonDialog*>();
    }
    static QComboBox* field(PersonDialog* dialog, int number) { return dialog->findChildren<QComboBox*>()[number]; }
    static QPushButton* ok(PersonDialog* dialog) {
        return dialog->findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok);
    }
    bool gone() {
        return QTest::qWaitFor([&] { return window.findChild<PersonDialog*>() == nullptr; });
    }

    Appearance appearance;
    MainWindow window{open_fake, appearance};
};

TEST_F(People, ANameAndARoleAreEnteredAndSeenInTheHistory) {
    PersonDialog* first = dialog();
    ASSERT_NE(first, nullptr);
    EXPECT_EQ(field(first, 0)->currentText(), "Ida") << "who works here so far";
    field(first, 0)->setCurrentText("  ");
    EXPECT_FALSE(ok(first)->isEnabled());
    field(first, 0)->setCurrentText("Sue");
    field(first, 1)->setCurrentText("supervisor");
    QTest::mouseClick(ok(first), Qt::LeftButton);
    ASSERT_TRUE(gone());
    ASSERT_TRUE(written(window));
    EXPECT_EQ(window.control().model().stamp().who, "Sue");
    EXPECT_EQ(test::opened(file, record::Project::Access::Read).people().value(),
              (std::vector<record::Person>{{"Sue", "supervisor"}}));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.desk().overview().people.size() == 1; }));
    // Known names bring their role, and a role can be changed.
    PersonDialog* second = dialog();
    field(second, 0)->setCurrentText("Ida");
    field(second, 1)->setCurrentText("");
    field(second, 0)->setCurrentText("Sue");
    EXPECT_EQ(field(second, 1)->currentText(), "supervisor");
    QTest::mouseClick(ok(second), Qt::LeftButton);
    ASSERT_TRUE(gone());

    window.editor().take_up(window.control().model().core()->reading.boundaries[3].id);
    window.editor().annotate("seen");
    ASSERT_TRUE(written(window));
    window.actions().at(ActionId::ShowHistory)->trigger();
    auto* history = window.findChild<HistoryView*>();
    ASSERT_NE(history, nullptr);
    ASSERT_TRUE(QTest::qWaitFor([&] { return history->list().topLevelItemCount() == 2; }));
    EXPECT_EQ(history->list().topLevelItem(0)->text(1), "Sue, supervisor");
    EXPECT_EQ(history->list().topLevelItem(1)->text(1), "Ida") << "nobody entered her role";
}

} // namespace
} // namespace pithward::bench
