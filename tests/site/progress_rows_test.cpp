// What the table of progress rests on: the wood of a core as a small picture, and whether its scan is there.
#include "app/progress/core_strip.h"
#include "app/progress/progress_rows.h"
#include "app/progress/progress_words.h"
#include "app/project/overview.h"
#include "libcore/record/scans_in_place.h"
#include "tests/app/fake_scan.h"
#include "tests/site/site_project.h"

#include <gtest/gtest.h>

#include <filesystem>

namespace pithward::bench {
namespace {

/// A scan of a core that stands, 100 x 1000 px, its bark below; reduced by 4. The upper half is dark, the lower light.
QImage standing_core() {
    QImage whole(25, 250, QImage::Format_RGB32);
    whole.fill(Qt::black);
    for (int y = 125; y < 250; ++y) {
        for (int x = 0; x < 25; ++x) {
            whole.setPixelColor(x, y, Qt::white);
        }
    }
    return whole;
}

TEST(CoreStrip, LiesLevelWithItsBarkToTheLeft) {
    ReadingRequest request = fake_request("a.png");
    request.path = {{50, 980}, {50, 20}};
    Reading reading = fake_reading(request);
    for (Boundary& boundary : reading.boundaries) {
        boundary.curve = {boundary.at + ImagePoint{-30, 0}, boundary.at, boundary.at + ImagePoint{30, 0}};
    }
    const QImage strip = core_strip(standing_core(), 4, reading, {240, 40});
    ASSERT_EQ(strip.width(), 240);
    EXPECT_LT(strip.height(), 40) << "no higher than the wood and a little";
    EXPECT_GT(strip.height(), 10);
    const int middle = strip.height() / 2;
    EXPECT_EQ(strip.pixelColor(20, middle), QColor(Qt::white)) << "the bark's half";
    EXPECT_EQ(strip.pixelColor(220, middle), QColor(Qt::black));
}

TEST(CoreStrip, APathWithoutLengthGivesNone) {
    Reading reading = fake_reading(fake_request("a.png"));
    reading.path.legs.front().points = {{5, 5}, {5, 5}};
    EXPECT_TRUE(core_strip(standing_core(), 4, reading, {240, 40}).isNull());
    reading.path.legs.clear();
    EXPECT_TRUE(core_strip(standing_core(), 4, reading, {240, 40}).isNull());
}

TEST(CoreStrip, AScanThatStandsIsLaidLevel) {
    const QSize size = whole_strip(standing_core(), {240, 40}).size();
    EXPECT_LE(size.width(), 240);
    EXPECT_GT(size.width(), 5 * size.height());
}

using ProgressRows = SiteProject;

TEST_F(ProgressRows, TellScansThatAreGoneAndLookNowhereElse) {
    std::filesystem::remove(folder.file("scans/T11a.png"));
    const record::Project project = test::opened(file, record::Project::Access::Read);
    auto cores = project.cores().value();
    cores[2].core.scan.clear();
    cores[3].core.scan = "../../elsewhere.png";
    const auto there = record::scans_in_place(project.folder(), cores);
    EXPECT_TRUE(there.contains("scans/T10a.png"));
    EXPECT_FALSE(there.contains("scans/T11a.png"));
    EXPECT_FALSE(there.contains(""));
    EXPECT_TRUE(there.contains("../../elsewhere.png")) << "nobody looks there unasked";
}

TEST_F(ProgressRows, SayTheSameAsTheReadings) {
    const record::Project project = test::opened(file, record::Project::Access::Read);
    const auto overview = read_overview(project).value();
    SiteShelf shelf;
    const auto seen = shelf.cores(project).value();
    const auto rows = progress_rows(overview, seen, nullptr, record::scans_in_place(project.folder(), overview.cores));
    ASSERT_EQ(rows.size(), 8U);
    EXPECT_EQ(rows[0].rings, 99) << "two rings were taken as one";
    EXPECT_EQ(rows[0].last_year, 2020);
    EXPECT_EQ(words_of(rows[0], progress::Stage::Dated), "1922 to 2020");
    EXPECT_EQ(words_of(rows[0], progress::Stage::Confirmed), "0 of 100");
    EXPECT_EQ(spoken(rows[0], progress::Stage::Confirmed), "0 of 100, not yet");
    EXPECT_EQ(rows[1].progress.next, progress::Step::Settle);
    EXPECT_EQ(against_in_short(rows[1]), "open findings: 1, and 1 more");
    EXPECT_EQ(against_in_full(rows[1]), "Against it: open findings: 1; boundaries confirmed by nobody: 102.");
}

} // namespace
} // namespace pithward::bench
