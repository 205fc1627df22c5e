#include "app/batch/scan_scale.h"
#include "tests/support/random_ruler.h"
#include "tests/support/raw_image.h"

#include <gtest/gtest.h>

namespace pithward::batch {
namespace {

using test::RandomRuler;
using test::RulerScan;
using test::TemporaryFolder;

/// A millimetre ruler of 1230 dpi whose file says `tag_dpi`.
RulerScan ruler_scan(const TemporaryFolder& folder, double tag_dpi) {
    RandomRuler ruler;
    ruler.dpi = tag_dpi;
    ruler.look.px_per_mm_x = ruler.look.px_per_mm_y = 1230.0 / 25.4;
    ruler.look.marks = 45;
    return test::scanned(folder, ruler);
}

RulerTask line(const RulerLine& along) {
    RulerTask task;
    task.lines = {along};
    return task;
}

RulerTask search(RulerTask::Search how) {
    RulerTask task;
    task.search = how;
    return task;
}

Reading short_reading() {
    Reading reading;
    reading.path.legs = {Leg{"scan", {{100.0, 300.0}, {900.0, 300.0}}, {}}};
    return reading;
}

TEST(ScanScale, IsTheRulersWhereALineIsGiven) {
    const TemporaryFolder folder;
    for (const double tag : {1200.0, 72.0}) { // believed or not
        const RulerScan scan = ruler_scan(folder, tag);
        const auto scale = scale_of(scan.scan, std::nullopt, line(scan.line));
        ASSERT_TRUE(scale.has_value()) << scale.error().line();
        const Calibration calibration = scale->for_path({});
        EXPECT_EQ(word(calibration.source), "ruler");
        EXPECT_NEAR(calibration.dpi_x(), 1230.0, 0.2);
        Reading reading = short_reading();
        ASSERT_TRUE(scale->add_findings(reading).has_value());
        ASSERT_EQ(reading.findings.size(), tag > 100.0 ? 1U : 0U); // 2.5 % from the tag
    }
}

TEST(ScanScale, IsTheTagsWhereNoLineIsGivenAndARulerSeenIsCompared) {
    const TemporaryFolder folder;
    for (const double tag : {1200.0, 1228.0}) {
        const RulerScan scan = ruler_scan(folder, tag);
        const auto scale = scale_of(scan.scan, std::nullopt, {});
        ASSERT_TRUE(scale.has_value()) << scale.error().line();
        EXPECT_EQ(scale->for_path({}).source, Calibration::Source::FileTag);
        EXPECT_TRUE(scale->seen.get().value().has_value());
        Reading reading = short_reading();
        ASSERT_TRUE(scale->add_findings(reading).has_value());
        ASSERT_EQ(reading.findings.size(), tag == 1200.0 ? 1U : 0U);
        if (tag == 1200.0) {
            EXPECT_EQ(reading.findings[0].kind, FindingKind::Scale);
            EXPECT_NE(reading.findings[0].reason.find("2.5 %"), std::string::npos) << reading.findings[0].reason;
        }
    }
}

TEST(ScanScale, FindsTheRulerAndUsesItWhenAsked) {
    const TemporaryFolder folder;
    const RulerScan scan = ruler_scan(folder, 1200.0);
    const auto used = scale_of(scan.scan, std::nullopt, search(RulerTask::Search::Use));
    ASSERT_TRUE(used.has_value()) << used.error().line();
    EXPECT_EQ(used->for_path({}).source, Calibration::Source::Ruler);
    EXPECT_NEAR(used->for_path({}).dpi_x(), 1230.0, 0.2);
    const auto not_looked_for = scale_of(scan.scan, std::nullopt, search(RulerTask::Search::No));
    EXPECT_FALSE(not_looked_for->seen.valid());
}

TEST(ScanScale, SaysSoWhereThereIsNone) {
    const TemporaryFolder folder;
    test::write_raw(folder.file("plain.png"), test::patterned(900, 400, CV_8UC3), {.dpi_x = 600.0, .dpi_y = 600.0});
    const ScanFile scan = ScanFile::open(folder.file("plain.png")).value();
    const auto none = scale_of(scan, std::nullopt, search(RulerTask::Search::Use));
    ASSERT_FALSE(none.has_value());
    EXPECT_NE(none.error().what.find("no ruler"), std::string::npos);
    EXPECT_FALSE(scale_of(scan, std::nullopt, {})->seen.get().value().has_value());
    EXPECT_FALSE(scale_of(scan, 1e9, {}).has_value());
}

} // namespace
} // namespace pithward::batch
