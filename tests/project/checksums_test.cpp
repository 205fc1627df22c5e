// Checksums of scans come beside the window.
#include "app/project/checksums.h"
#include "libcore/record/project.h"
#include "libcore/record/scan_entry.h"
#include "tests/project/fake_project.h"

#include <gtest/gtest.h>

#include <QTest>
#include <filesystem>
#include <fstream>

namespace pithward::bench {
namespace {

/// The fake project, whose scans have no checksums yet.
struct UnsummedProject : FakeProject {
    std::vector<record::ScanEntry> summed;

    void SetUp() override {
        FakeProject::SetUp();
        record::Project project = test::opened(file);
        summed = project.scans().value();
        for (record::ScanEntry scan : summed) {
            scan.sha256.clear();
            ASSERT_TRUE(project.put_scan(scan, test::stamp_by("Ida")).has_value());
        }
    }
    [[nodiscard]] std::vector<record::ScanEntry> kept() const {
        return test::opened(file, record::Project::Access::Read).scans().value();
    }
};

TEST_F(UnsummedProject, TheWindowComputesWhatIsMissingAndTheHistoryTellsIt) {
    Appearance appearance;
    MainWindow window(open_fake, appearance);
    open(window, "Ida");
    EXPECT_TRUE(QTest::qWaitFor([&] { return kept() == summed; }));
    ASSERT_TRUE(written(window));
    const auto project = test::opened(file, record::Project::Access::Read);
    int lines = 0;
    const auto history = project.history().value();
    for (const record::HistoryEntry& line : history) {
        lines += line.label.starts_with("Note the size and checksum of the scan") ? 1 : 0;
    }
    EXPECT_EQ(lines, 3) << "each once";
}

TEST_F(UnsummedProject, AScanThatLeadsOutsideIsNotRead) {
    const test::TemporaryFolder elsewhere;
    std::filesystem::rename(folder.file("scans/H01B.png"), elsewhere.file("H01B.png"));
    std::filesystem::create_symlink(elsewhere.file("H01B.png"), folder.file("scans/H01B.png"));
    Appearance appearance;
    MainWindow window(open_fake, appearance);
    open(window, "Ida");
    EXPECT_TRUE(QTest::qWaitFor([&] { return kept()[2] == summed[2]; })) << "the last one in line";
    EXPECT_EQ(kept()[1].sha256, "");
}

TEST(Checksums, OneThatIsClosedBeforeItsTurnWaitsForNothing) {
    const test::TemporaryFolder folder;
    const std::string file = folder.file("large.tif");
    std::ofstream(file) << "II";
    std::filesystem::resize_file(file, std::uintmax_t{20} << 30U); // takes no room on the disk, and a minute to read
    {
        Checksums checksums;
        checksums.compute(folder.file(""), "large.tif");
        checksums.compute(folder.file(""), "again.tif");
    }
    SUCCEED() << "a test that hangs here is stopped by its limit";
}

} // namespace
} // namespace pithward::bench
