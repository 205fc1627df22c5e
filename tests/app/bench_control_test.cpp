#include "app/bench/control/bench_control.h"
#include "tests/app/fake_scan.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <atomic>
#include <memory>

namespace pithward::bench {
namespace {

class BenchControlTest : public testing::Test {
protected:
    void read(const QStringList& paths) {
        control.open(paths);
        ASSERT_TRUE(QTest::qWaitFor([&] { return !control.jobs().busy(); }));
        QCoreApplication::processEvents();
    }
    const BenchModel& model() { return control.model(); }

    BenchControl control{open_fake};
    QSignalSpy told{&control, &BenchControl::told};
};

TEST_F(BenchControlTest, AScanIsOpenedItsCoreFoundAndMeasured) {
    read({"a.png"});
    ASSERT_NE(model().core(), nullptr);
    EXPECT_EQ(model().core()->reading.boundaries.size(), 45U);
    EXPECT_EQ(model().core()->series.rings.size(), 44U);
    const double expected_mm = fake_step / (1200 / 25.4);
    EXPECT_NEAR(model().core()->series.rings[3].width->value(), expected_mm, 1e-9);
    EXPECT_TRUE(told.isEmpty());
}

TEST_F(BenchControlTest, AWrongFileIsToldAndTheBenchStaysAsItIs) {
    read({"a.png"});
    const picture::MeasuredCore before = *model().core();
    read({"wrong.png"});
    ASSERT_EQ(told.count(), 1);
    EXPECT_EQ(told[0][0].toString(), "wrong.png: this is not an image; give a TIFF, PNG or JPEG file");
    EXPECT_EQ(model().scans().size(), 1U);
    EXPECT_EQ(*model().core(), before);
}

TEST_F(BenchControlTest, TheSameScanIsNotPutOnTheBenchTwice) {
    read({"a.png"});
    read({"a.png", "b.png"});
    EXPECT_EQ(model().scans().size(), 2U);
    EXPECT_EQ(model().scan()->opened->name(), "a.png");
}

TEST_F(BenchControlTest, WithoutAResolutionNothingIsMeasuredUntilItIsGiven) {
    read({"untold.png"});
    ASSERT_NE(model().scan(), nullptr);
    EXPECT_FALSE(model().scan()->calibration);
    EXPECT_EQ(model().core(), nullptr);
    control.use_dpi(2400);
    ASSERT_TRUE(QTest::qWaitFor([&] { return model().core() != nullptr; }));
    EXPECT_EQ(model().scan()->calibration->source, Calibration::Source::Given);
}

TEST_F(BenchControlTest, CancelledWorkLeavesNothingBehind) {
    control.open({"slow.png"});
    ASSERT_TRUE(QTest::qWaitFor([&] { return model().scan() != nullptr && control.jobs().busy(); }));
    QSignalSpy finished(&control.jobs(), &ScanJobs::finished);
    control.jobs().cancel();
    EXPECT_FALSE(control.jobs().busy());
    ASSERT_EQ(finished.count(), 1);
    EXPECT_TRUE(finished[0][0].toBool());
    QTest::qWait(50);
    EXPECT_TRUE(model().scan()->cores.empty());
    EXPECT_TRUE(told.isEmpty());
}

TEST_F(BenchControlTest, AResultOfAnOlderRevisionIsDropped) {
    read({"a.png"});
    BenchModel& changing = control.model();
    const std::uint64_t before = model().scan()->revision;
    control.set_last_year(Year(2020));
    EXPECT_GT(model().scan()->revision, before);
    EXPECT_FALSE(changing.put_cores(model().scan()->id, before, {}));
    EXPECT_EQ(model().core()->reading.last_year, Year(2020));
    EXPECT_FALSE(changing.put_cores(4711, before, {})); // a scan that is gone
}

TEST_F(BenchControlTest, TheLastYearDatesTheRings) {
    read({"a.png"});
    EXPECT_FALSE(model().core()->series.rings.front().year);
    control.set_last_year(Year(2020));
    EXPECT_EQ(model().core()->series.rings.front().year, Year(2020));
    EXPECT_EQ(model().core()->series.rings.back().year, Year(2020 - 43));
    control.set_last_year(std::nullopt);
    EXPECT_FALSE(model().core()->series.rings.front().year);
}

TEST_F(BenchControlTest, APathDrawnOnACoreTakesTheOldPathsPlace) {
    read({"a.png"});
    control.set_last_year(Year(2020));
    control.read_drawn_path({{110, 104}, {1500, 96}});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !control.jobs().busy(); }));
    ASSERT_EQ(model().scan()->cores.size(), 1U);
    EXPECT_EQ(model().core()->reading.path.legs[0].points.back(), (ImagePoint{1500, 96}));
    EXPECT_EQ(model().core()->reading.last_year, Year(2020)); // it starts where the old one did
    control.read_drawn_path({{700, 104}, {1500, 96}});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !control.jobs().busy(); }));
    EXPECT_FALSE(model().core()->reading.last_year); // it starts at another ring
}

TEST_F(BenchControlTest, APathDrawnBesideTheCoresIsAnotherCore) {
    read({"a.png"});
    control.read_drawn_path({{100, 190}, {1500, 190}});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !control.jobs().busy(); }));
    EXPECT_EQ(model().scan()->cores.size(), 2U);
    EXPECT_EQ(model().core_index(), 1);
    EXPECT_EQ(model().core()->reading.bark_end.how, "given");
}

TEST_F(BenchControlTest, LookingForCoresAgainLeavesWhatWasChangedOrDrawnByHand) {
    read({"a.png"});
    control.read_drawn_path({{100, 190}, {1500, 190}});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !control.jobs().busy(); }));
    control.show_core({model().scan()->id, 0});
    control.set_last_year(Year(2020));
    const std::vector<picture::MeasuredCore> before = model().scan()->cores;
    ASSERT_EQ(before.size(), 2U);
    control.read_shown_scan();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !control.jobs().busy(); }));
    EXPECT_EQ(model().scan()->cores, before);
    ASSERT_EQ(told.count(), 1);
    EXPECT_TRUE(told[0][0].toString().contains("by hand"));
}

TEST_F(BenchControlTest, ADamagedScanDoesNotKeepTheNextFromBeingRead) {
    read({"broken.tif", "a.png"});
    ASSERT_TRUE(QTest::qWaitFor([&] { return model().core() != nullptr; }));
    EXPECT_EQ(model().scans().size(), 1U);
    EXPECT_EQ(model().scan()->opened->name(), "a.png");
}

TEST(BenchControlAlone, WhatWasReadStaysWhenTheFileIsDamagedLater) {
    auto damaged = std::make_shared<std::atomic<bool>>(false);
    BenchControl control([damaged](const std::string& path) -> Outcome<OpenedScan> {
        OpenedScan scan = fake_scan(path);
        scan.find_cores = [damaged, sound = scan.find_cores](const Calibration& calibration, const Work& work) {
            return *damaged ? fail("a.png", "the image data is damaged", "take a copy") : sound(calibration, work);
        };
        scan.is_damaged = [damaged] { return damaged->load(); };
        return scan;
    });
    control.open({"a.png"});
    ASSERT_TRUE(QTest::qWaitFor([&] { return control.model().core() != nullptr; }));
    control.set_last_year(Year(2020));
    *damaged = true;
    QSignalSpy told(&control, &BenchControl::told);
    control.read_shown_scan();
    ASSERT_TRUE(QTest::qWaitFor([&] { return told.count() == 1; }));
    ASSERT_NE(control.model().core(), nullptr);
    EXPECT_EQ(control.model().core()->reading.last_year, Year(2020));
}

TEST_F(BenchControlTest, NoExportGoesOverAScanOfTheBench) {
    const QTemporaryDir folder;
    const QString scan = folder.filePath("a.png");
    QFile file(scan);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("the only scan of this core");
    file.close();
    ASSERT_TRUE(QFile::link(scan, folder.filePath("link.png")));
    read({scan});
    for (const QString& path : {scan, folder.filePath("link.png"), folder.path() + "/./a.png"}) {
        told.clear();
        control.export_shown(path, export_formats()[3]);
        ASSERT_TRUE(QTest::qWaitFor([&] { return told.count() == 1; })) << path.toStdString();
        EXPECT_TRUE(told[0][0].toString().contains("this is a scan")) << told[0][0].toString().toStdString();
    }
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), "the only scan of this core");
    EXPECT_NE(proposed_name(*model().scan()->opened, export_formats()[3]), scan.toStdString());
    const ExportInput other{model().scan()->opened, {}, {folder.filePath("b.png").toStdString()}};
    ASSERT_TRUE(QFile::copy(scan, folder.filePath("b.png")));
    EXPECT_FALSE(spare_scans(folder.filePath("b.png").toStdString(), other)) << "nor over another one of the bench";
    EXPECT_TRUE(spare_scans(folder.filePath("c.png").toStdString(), other));
}

TEST_F(BenchControlTest, APathOutsideTheScanIsToldAndNothingChanges) {
    read({"a.png"});
    control.read_drawn_path({{100, 100}, {90000, 100}});
    EXPECT_TRUE(QTest::qWaitFor([&] { return !control.jobs().busy(); }));
    EXPECT_EQ(told.count(), 1);
    EXPECT_EQ(model().core()->reading.path.legs[0].points.back(), (ImagePoint{1900, 100}));
}

TEST_F(BenchControlTest, SwappedEndsAreReadFromTheOtherEnd) {
    read({"a.png"});
    control.swap_ends();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !control.jobs().busy(); }));
    EXPECT_EQ(model().core()->reading.path.legs[0].points.front(), (ImagePoint{1900, 100}));
}

TEST_F(BenchControlTest, WhatTheProgramJudgedIsNotTakenForSaid) {
    read({"a.png"});
    Reading reading = model().core()->reading;
    reading.outer = OuterWood::Complete;
    EXPECT_EQ(said_outer(reading), OuterWood::Complete);
    reading.findings.front().kind = FindingKind::OuterWood;
    EXPECT_EQ(said_outer(reading), OuterWood::Unknown);
    EXPECT_EQ(request_of(reading, *model().scan()->calibration).outer, OuterWood::Unknown);
}

TEST_F(BenchControlTest, SayingTheOuterWoodReadsTheCoreAgain) {
    read({"a.png"});
    control.set_outer(OuterWood::Lost);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !control.jobs().busy(); }));
    EXPECT_EQ(model().core()->reading.outer, OuterWood::Lost);
}

TEST_F(BenchControlTest, AFolderGivesItsScansByName) {
    const QTemporaryDir folder(QDir::tempPath() + "/scans of März-XXXXXX");
    for (const char* name : {"b.png", "a.tif", "notes.txt"}) {
        QFile file(folder.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    }
    read({folder.path()});
    ASSERT_EQ(model().scans().size(), 2U);
    EXPECT_EQ(model().scan()->opened->name(), "a.tif");
}

TEST_F(BenchControlTest, EveryFormatIsExportedWhole) {
    read({"a.png"});
    control.set_last_year(Year(2020));
    const QTemporaryDir folder(QDir::tempPath() + "/export März-XXXXXX");
    QSignalSpy done(&control, &BenchControl::done);
    for (const ExportFormat& format : export_formats()) {
        const QString path = folder.filePath(QString("a.") + format.suffix);
        control.export_shown(path, format);
        ASSERT_TRUE(QTest::qWaitFor([&] { return !control.jobs().busy(); }));
        EXPECT_GT(QFileInfo(path).size(), 100) << format.suffix;
    }
    EXPECT_EQ(done.count(), static_cast<int>(export_formats().size()));
    QFile csv(folder.filePath("a.csv"));
    ASSERT_TRUE(csv.open(QIODevice::ReadOnly));
    EXPECT_TRUE(csv.readAll().contains("2020"));
}

TEST_F(BenchControlTest, AFolderThatIsNotThereIsToldAndNothingIsWritten) {
    read({"a.png"});
    control.export_shown("/nonexistent/place/a.csv", export_formats().front());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !control.jobs().busy(); }));
    ASSERT_EQ(told.count(), 1);
    EXPECT_TRUE(told[0][0].toString().contains("/nonexistent/place/a.csv"));
}

} // namespace
} // namespace pithward::bench
