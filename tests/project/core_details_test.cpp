// Field data of a core in the real window: what a person types there, what follows from it, what is taken back.
#include "app/bench/panels/message_bar.h"
#include "app/project/core_details.h"
#include "app/project/detail_field.h"
#include "libcore/record/project.h"
#include "tests/project/fake_project.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

namespace pithward::bench {
namespace {

using record::Project;

class CoreDetailsInWindow : public FakeProject {
protected:
    void SetUp() override {
        FakeProject::SetUp();
        open(window, "Ida");
    }
    DetailField* field(const std::string& column) {
        for (DetailField* one : window.findChildren<DetailField*>()) {
            if (one->column().name == column) {
                return one;
            }
        }
        return nullptr;
    }
    QLineEdit* line(const std::string& column) { return field(column)->findChild<QLineEdit*>(); }
    /// As a person does: into the field, all of it replaced, and done.
    void type(const std::string& column, const QString& text) {
        line(column)->setFocus();
        line(column)->selectAll();
        QTest::keyClicks(line(column), text);
        QTest::keyClick(line(column), Qt::Key_Return);
        ASSERT_TRUE(written(window));
    }
    record::CoreEntry kept(std::size_t core = 0) {
        return test::opened(file, Project::Access::Read).cores().value().at(core);
    }

    Appearance appearance;
    MainWindow window{open_fake, appearance};
};

TEST_F(CoreDetailsInWindow, WhatIsTypedIsWrittenAndTold) {
    EXPECT_EQ(line("species")->text(), "PISY");
    type("dbh_cm", "31,5");
    EXPECT_EQ(kept(0).tree.dbh_cm, 31.5);
    EXPECT_EQ(kept(1).tree.dbh_cm, 31.5) << "the other core of the same tree";
    EXPECT_FALSE(kept(2).tree.dbh_cm);
    const auto last = test::opened(file, Project::Access::Read).history(record::CoreId{1}).value().back();
    EXPECT_EQ(last.who, "Ida");
    EXPECT_EQ(last.label, "Change Diameter, cm of H01A from not known to 31.5");
    ASSERT_TRUE(QTest::qWaitFor([&] { return line("dbh_cm")->text() == "31.5"; }));
}

TEST_F(CoreDetailsInWindow, TheSitesOwnValuesComplete) {
    type("collector", "Ada Birk");
    window.desk().open_core(record::CoreId{2});
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.windowTitle().startsWith("H01B"); }));
    EXPECT_EQ(line("collector")->text(), "");
    line("collector")->setFocus();
    QTest::keyClicks(line("collector"), "bi");
    EXPECT_EQ(line("collector")->completer()->currentCompletion(), "Ada Birk");
}

TEST_F(CoreDetailsInWindow, WhatCannotBeIsToldAndStaysToBeMended) {
    type("date_cored", "30.6.2024");
    EXPECT_TRUE(window.messages().text().contains("2024-06-30")) << window.messages().text().toStdString();
    EXPECT_EQ(kept().core.date_cored, "");
    EXPECT_EQ(line("date_cored")->text(), "30.6.2024");
    type("date_cored", "2024-06-30");
    EXPECT_EQ(kept().core.date_cored, "2024-06-30");
}

TEST_F(CoreDetailsInWindow, ALeanRaisesItsFindingAndTakesItAwayAgain) {
    const auto told = [&](const QString& word) {
        const auto& findings = window.control().model().core()->reading.findings;
        return std::any_of(findings.begin(), findings.end(), [&](const Finding& finding) {
            return QString::fromStdString(finding.reason).contains(word);
        });
    };
    type("azimuth_deg", "10");
    type("lean_azimuth_deg", "15");
    type("lean_deg", "12");
    ASSERT_TRUE(QTest::qWaitFor([&] { return told("lean"); }));
    type("lean_azimuth_deg", "100"); // square to the core
    ASSERT_TRUE(QTest::qWaitFor([&] { return !told("lean"); }));
    EXPECT_EQ(test::opened(file, Project::Access::Read).reading(ReadingId{1})->findings,
              window.control().model().core()->reading.findings);
}

TEST_F(CoreDetailsInWindow, ChangesAreTakenBackOneAfterTheOther) {
    type("dbh_cm", "31");
    type("notes", "scar");
    auto* back = window.findChild<CoreDetails*>()->findChild<QPushButton*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return back->isVisible() && back->isEnabled(); }));
    EXPECT_TRUE(back->text().contains("Notes")) << back->text().toStdString();
    QTest::mouseClick(back, Qt::LeftButton);
    ASSERT_TRUE(written(window));
    EXPECT_EQ(kept().core.notes, "");
    EXPECT_EQ(kept().tree.dbh_cm, 31.0);
    ASSERT_TRUE(QTest::qWaitFor([&] { return back->isEnabled() && back->text().contains("Diameter"); }));
    QTest::mouseClick(back, Qt::LeftButton);
    ASSERT_TRUE(written(window));
    EXPECT_FALSE(kept().tree.dbh_cm);
    EXPECT_FALSE(back->isVisible());
    EXPECT_EQ(test::opened(file, Project::Access::Read).history().value().back().label,
              "Take back: Diameter, cm of H01A from not known to 31");
}

TEST_F(CoreDetailsInWindow, AChangeOfTheSameFieldBySomebodyElseIsNotWrittenOver) {
    {
        Project other = test::opened(file);
        record::CoreEntry theirs = kept();
        theirs.tree.dbh_cm = 44.0;
        ASSERT_TRUE(other.put_details(kept(), theirs, "theirs", test::stamp_by("Udo")).has_value());
    } // before this window has looked
    type("dbh_cm", "45");
    EXPECT_TRUE(window.messages().text().contains("somebody else")) << window.messages().text().toStdString();
    EXPECT_EQ(kept().tree.dbh_cm, 44.0);
    line("notes")->setFocus();
    ASSERT_TRUE(QTest::qWaitFor([&] { return line("dbh_cm")->text() == "44"; }));
}

TEST_F(CoreDetailsInWindow, WhatIsBeingTypedIsWrittenWhenTheWindowCloses) {
    line("collector")->setFocus();
    QTest::keyClicks(line("collector"), "Ada Birk");
    window.close();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.isVisible(); }));
    EXPECT_EQ(kept().core.collector, "Ada Birk");
}

TEST_F(CoreDetailsInWindow, TheScanOfACoreWithAReadingStays) {
    EXPECT_TRUE(line("scan")->isReadOnly());
    EXPECT_FALSE(line("notes")->isReadOnly());
}

} // namespace
} // namespace pithward::bench
