#include "app/bench/exporting/export_dialog.h"
#include "app/bench/panels/break_dialog.h"
#include "app/bench/panels/message_bar.h"
#include "app/bench/panels/scale_dialog.h"
#include "app/bench/window/window_memory.h"
#include "tests/app/bench_at_fake.h"

#include <gtest/gtest.h>
#include <sys/resource.h>

#include <QDir>
#include <QFile>
#include <QMessageBox>
#include <QPushButton>
#include <QSpinBox>
#include <QTemporaryDir>
#include <csignal>

namespace pithward::bench {
namespace {

/// No file gets longer than this while it lives.
class FileSizeLimit {
public:
    explicit FileSizeLimit(rlim_t bytes) {
        std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &before_);
        rlimit limit = before_;
        limit.rlim_cur = bytes;
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~FileSizeLimit() { setrlimit(RLIMIT_FSIZE, &before_); }
    FileSizeLimit(const FileSizeLimit&) = delete;
    FileSizeLimit& operator=(const FileSizeLimit&) = delete;

private:
    rlimit before_{};
};

/// A person at the dialogs of the window, with one fake core.
class WindowDialogs : public BenchAtFake {
protected:
    void SetUp() override { open("a.png", {400, 100}); }
    template <typename Dialog>
    Dialog* dialog() {
        EXPECT_TRUE(QTest::qWaitFor([&] { return window.findChild<Dialog*>() != nullptr; }));
        return window.findChild<Dialog*>();
    }
    static QPushButton* button(const QWidget* of, const QString& text) {
        for (QPushButton* one : of->findChildren<QPushButton*>()) {
            if (one->text().remove('&') == text || one->accessibleName() == text) {
                return one;
            }
        }
        return nullptr;
    }
};

TEST_F(WindowDialogs, TheScaleOfARulerIsUsedWithoutLosingABoundaryAndCanBeUndone) {
    const double width = model().core()->series.rings[3].width->value();
    trigger(ActionId::ReadRuler);
    click({150, 60});
    click({900, 60});
    auto* scale = dialog<ScaleDialog>();
    ASSERT_NE(scale, nullptr);
    EXPECT_TRUE(window.messages().text().contains("0.8 %"));
    EXPECT_EQ(reading(), before) << "reading a ruler changes nothing by itself";
    button(scale, "Use what The ruler says")->click();
    QCoreApplication::processEvents();
    EXPECT_EQ(reading().calibrations.at("a.png").source, Calibration::Source::Ruler);
    EXPECT_EQ(reading().boundaries, before.boundaries);
    EXPECT_NEAR(model().core()->series.rings[3].width->value(), width * 1200.0 / 1190.0, 1e-9);
    trigger(ActionId::Undo);
    EXPECT_EQ(reading(), before);
}

TEST_F(WindowDialogs, LostWoodAsksForItsRingsAndABreakCanBeChangedAndRemoved) {
    window.control().set_last_year(Year(2020));
    const auto rings = model().core()->series.rings.size();
    trigger(ActionId::MarkLostWood);
    click({395, 100});
    click({410, 100});
    auto* asked = dialog<BreakDialog>();
    ASSERT_NE(asked, nullptr);
    EXPECT_LT(model().core()->series.rings.size(), rings) << "while nobody knows the number the series ends there";
    asked->findChild<QSpinBox*>()->setValue(3);
    button(asked, "OK")->click();
    ASSERT_EQ(reading().breaks[0].rings_lost, 3);
    EXPECT_EQ(model().core()->series.rings.size(), rings + 3);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    window.editor().remove_break(reading().breaks[0].id);
    EXPECT_TRUE(reading().breaks.empty());
    trigger(ActionId::Undo);
    EXPECT_EQ(reading().breaks.size(), 1U);
}

TEST_F(WindowDialogs, AnExportIsShownBeforeItIsWritten) {
    window.control().set_last_year(Year(2020));
    const QTemporaryDir folder(QDir::tempPath() + "/export März-XXXXXX");
    trigger(ActionId::ExportDecadal);
    auto* shown = dialog<ExportDialog>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return shown->ready(); }));
    const QString text = shown->preview_text();
    EXPECT_TRUE(text.contains("2020")) << text.toStdString();
    const QString path = folder.filePath("a.rwl");
    shown->set_path(path);
    shown->save();
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(QString::fromUtf8(file.readAll()), text) << "what was shown is what is written";
}

TEST_F(WindowDialogs, ClosingAsksOnlyWhileSomethingIsInNoFile) {
    const auto question = [this] { return window.findChild<QMessageBox*>(); };
    window.control().set_last_year(Year(2020));
    settle();
    EXPECT_FALSE(window.close());
    ASSERT_NE(question(), nullptr);
    EXPECT_TRUE(question()->text().contains("a.png"));
    button(question(), "Stay")->click();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_TRUE(window.isVisible());

    const QTemporaryDir folder;
    trigger(ActionId::ExportJson);
    auto* shown = dialog<ExportDialog>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return shown->ready(); }));
    shown->set_path(folder.filePath("a.json"));
    shown->save();
    trigger(ActionId::Undo);
    EXPECT_TRUE(window.close()) << "nothing is left that could be lost";
    window.show();
    trigger(ActionId::Redo);
    EXPECT_FALSE(window.close()) << "the file is older than this";
    ASSERT_TRUE(QTest::qWaitFor([&] { return question() != nullptr; }));
    button(question(), "Close and lose it")->click();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !window.isVisible(); }));
}

TEST_F(WindowDialogs, WhereAnExportCantBeWrittenTheReasonIsToldAndNothingIsLost) {
    for (const char* path : {"/nonexistent/place/a.csv", "/proc/a.csv", "/dev/null/a.csv"}) {
        trigger(ActionId::ExportCsv);
        auto* shown = dialog<ExportDialog>();
        ASSERT_TRUE(QTest::qWaitFor([&] { return shown->ready(); }));
        shown->set_path(path);
        shown->save();
        EXPECT_TRUE(shown->isVisible()) << path;
        EXPECT_TRUE(shown->said().contains(path)) << shown->said().toStdString();
        EXPECT_TRUE(shown->ready()) << "another place can be given";
        shown->reject();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    EXPECT_EQ(reading(), before);
}

TEST_F(WindowDialogs, AFullDiskLeavesNoPartOfAFileAndTheOldOneAsItWas) {
    const QTemporaryDir folder;
    const std::string path = folder.filePath("a.csv").toStdString();
    ASSERT_TRUE(write_export(path, {"what was there", {}}));
    // A limit on the size of files stands for a full disk: the write fails half way.
    const FileSizeLimit limit(1 << 16);
    const auto done = write_export(path, {std::string(1 << 20, 'x'), {}});
    ASSERT_FALSE(done);
    EXPECT_NE(done.error().line().find(path), std::string::npos) << done.error().line();
    QFile file(QString::fromStdString(path));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), "what was there");
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot).size(), 1);
}

TEST_F(WindowDialogs, AScanThatVanishedMeanwhileIsToldWhereItsPixelsAreNeeded) {
    OpenedScan gone = *model().scan()->opened;
    gone.pixels = [](QRect, int) -> Outcome<QImage> { return fail("a.png", "the file is not there", "put it back"); };
    ExportDialog shown({std::make_shared<const OpenedScan>(gone), model().scan()->cores}, export_formats()[3]);
    ASSERT_TRUE(QTest::qWaitFor([&] { return shown.said().contains("not there"); }));
    EXPECT_FALSE(shown.ready());
}

TEST_F(WindowDialogs, TheWindowRemembersWhatWasOpened) {
    const QTemporaryDir folder;
    QSettings settings(folder.filePath("window.ini"), QSettings::IniFormat);
    WindowMemory memory(settings);
    MainWindow other(open_fake, appearance);
    other.keep_in(memory);
    other.control().open({"a.png"});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !memory.recent().isEmpty(); }));
    EXPECT_TRUE(memory.recent().front().endsWith("a.png"));
    for (int i = 0; i < 2 * WindowMemory::most_recent; ++i) {
        memory.note_opened({QString("/%1.png").arg(i)});
    }
    EXPECT_EQ(memory.recent().size(), WindowMemory::most_recent);
    EXPECT_EQ(memory.recent().front(), QString("/%1.png").arg(2 * WindowMemory::most_recent - 1));
}

} // namespace
} // namespace pithward::bench
