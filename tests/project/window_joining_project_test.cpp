// A core of a project that goes on on another scan: what is written, and what comes back.
#include "app/bench/panels/message_bar.h"
#include "libcore/edit/joined_readings.h"
#include "libcore/record/project.h"
#include "tests/project/fake_project.h"

#include <gtest/gtest.h>

#include <QTest>
#include <fstream>

namespace pithward::bench {
namespace {

using record::Project;

class JoiningInAProject : public FakeProject {
protected:
    void SetUp() override {
        FakeProject::SetUp();
        std::ofstream(folder.file("scans/H01A-inner.png")) << "more pixels of H01A";
        open(window, "Ida");
    }
    /// Brings a scan to the bench and reads its core.
    void open_scan(const std::string& path) {
        window.control().open({QString::fromStdString(path)});
        ASSERT_TRUE(QTest::qWaitFor([&] {
            const BenchScan* scan = window.control().model().scan();
            return scan != nullptr && scan->opened->path == path && !scan->cores.empty();
        }));
    }
    /// As the dialog does after the clicks.
    void join_with_shown() {
        const CorePlace inner = window.control().model().present();
        window.desk().open_core(record::CoreId{1});
        ASSERT_TRUE(QTest::qWaitFor([&] { return window.windowTitle().startsWith("H01A,"); }));
        const CorePlace outer = window.control().model().present();
        window.join(outer, inner, MeetAtBoundary{BoundaryId{30}, BoundaryId{6}});
        ASSERT_TRUE(written(window));
    }

    Appearance appearance;
    MainWindow window{open_fake, appearance};
};

TEST_F(JoiningInAProject, IsKeptAndComesBackWithBothScans) {
    open_scan(folder.file("scans/H01A-inner.png"));
    join_with_shown();
    EXPECT_TRUE(window.messages().text().isEmpty()) << window.messages().text().toStdString();
    {
        const Project kept = test::opened(file, Project::Access::Read);
        const Reading reading = kept.reading(ReadingId{1}).value();
        ASSERT_EQ(reading.path.legs.size(), 2U);
        EXPECT_EQ(reading.path.legs[1].scan, "scans/H01A-inner.png");
        const auto scans = kept.scans().value();
        EXPECT_TRUE(std::any_of(scans.begin(), scans.end(), [](const record::ScanEntry& scan) {
            return scan.path == "scans/H01A-inner.png" && scan.bytes == 19;
        }));
    }
    EXPECT_TRUE(QTest::qWaitFor([&] {
        const auto scans = test::opened(file, Project::Access::Read).scans().value();
        return std::any_of(scans.begin(), scans.end(), [](const record::ScanEntry& scan) {
            return scan.path == "scans/H01A-inner.png" && scan.sha256.size() == 64;
        });
    })) << "its checksum is computed beside the window";
    MainWindow again{open_fake, appearance};
    open(again, "Ida");
    BenchModel& model = again.control().model();
    ASSERT_TRUE(QTest::qWaitFor([&] { return model.named("scans/H01A-inner.png") != nullptr; }));
    QTest::qWait(50);
    EXPECT_EQ(model.scan()->opened->name(), "scans/H01A.png");
    again.control().show_scan(model.named("scans/H01A-inner.png")->id);
    QTest::qWait(50);
    ASSERT_NE(model.core(), nullptr);
    EXPECT_EQ(model.core()->reading.id, ReadingId{1});
    EXPECT_EQ(model.cores_on_shown().size(), 1U) << "nobody looks for cores there";
}

TEST_F(JoiningInAProject, AScanOutsideTheProjectsFolderIsRefused) {
    const test::TemporaryFolder elsewhere;
    std::ofstream(elsewhere.file("x.png")) << "pixels";
    open_scan(elsewhere.file("x.png"));
    join_with_shown();
    EXPECT_TRUE(window.messages().text().contains("its own folder")) << window.messages().text().toStdString();
    EXPECT_EQ(test::opened(file, Project::Access::Read).reading(ReadingId{1})->path.legs.size(), 1U);
}

} // namespace
} // namespace pithward::bench
