#include "libimaging/calibrate/ruler_calibration.h"
#include "libimaging/calibrate/ruler_scale.h"
#include "tests/support/random_ruler.h"
#include "tests/support/raw_image.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::test {
namespace {

RandomRuler plain_ruler(Graduation graduation, double dpi) {
    RandomRuler ruler;
    ruler.graduation = graduation;
    ruler.dpi = dpi;
    RulerLook& look = ruler.look;
    look.px_per_mm_x = look.px_per_mm_y = dpi / 25.4;
    look.spacing_mm = kind_of(graduation).spacing.value();
    look.longer_each = kind_of(graduation).longer_at_each;
    look.lengths_mm.clear();
    for (std::size_t rank = 0; rank <= look.longer_each.size(); ++rank) {
        look.lengths_mm.push_back(1.3 + 0.8 * static_cast<double>(rank));
    }
    look.marks = static_cast<int>(40.0 / look.spacing_mm);
    return ruler;
}

RulerScale scale_of(const TemporaryFolder& folder, const RandomRuler& ruler,
                    std::optional<Graduation> graduation = std::nullopt,
                    const std::optional<Calibration>& told = std::nullopt) {
    const RulerScan scan = scanned(folder, ruler);
    const auto scale = scale_along(scan.scan, scan.line, graduation, told);
    EXPECT_TRUE(scale.has_value()) << scale.error().line();
    return scale.value_or(RulerScale());
}

TEST(RulerScale, TellsGraduationsApartAndMeasuresThem) {
    const TemporaryFolder folder;
    for (const GraduationKind& kind : graduation_kinds()) {
        for (const double dpi : {600.0, 1200.0}) {
            const RulerScale scale = scale_of(folder, plain_ruler(kind.graduation, dpi));
            EXPECT_EQ(scale.graduation, kind.graduation);
            EXPECT_EQ(scale.basis, RulerScale::Basis::LengthsOfMarks);
            EXPECT_NEAR(scale.px_per_mm, dpi / 25.4, 1e-4 * dpi / 25.4) << kind.word << " at " << dpi;
            EXPECT_LT(scale.relative_sd, 1e-4);
        }
    }
}

TEST(RulerScale, IsSquareToTheMarksWhereTheLineIsNot) {
    const TemporaryFolder folder;
    RandomRuler ruler = plain_ruler(Graduation::Millimetre, 1200.0);
    ruler.look.lengths_mm = {3.0, 4.0, 5.0};
    ruler.look.marks = 25;
    // From one end of the marks to the other: 5 degrees off the ruler, which along the line alone would be 0.4 %.
    ruler.aside_mm = -1.1;
    ruler.aside_to_mm = 1.1;
    ruler.look.tilt_deg = 2.0;
    const RulerScale scale = scale_of(folder, ruler);
    EXPECT_NEAR(scale.px_per_mm, ruler.look.px_per_mm_x, 2e-4 * ruler.look.px_per_mm_x);
    EXPECT_NEAR(degrees(std::atan2(scale.normal.y, scale.normal.x)), 2.0, 0.1);
}

TEST(RulerScale, PaleMarksOnADarkRulerAreMarksToo) {
    const TemporaryFolder folder;
    RandomRuler ruler = plain_ruler(Graduation::Millimetre, 1200.0);
    std::swap(ruler.look.base, ruler.look.ink);
    const RulerScale scale = scale_of(folder, ruler);
    EXPECT_EQ(scale.graduation, Graduation::Millimetre);
    EXPECT_NEAR(scale.px_per_mm, ruler.look.px_per_mm_x, 1e-4 * ruler.look.px_per_mm_x);
}

TEST(RulerScale, FindsTheFinerMarksBesideTheLine) {
    const TemporaryFolder folder;
    RandomRuler ruler = plain_ruler(Graduation::HalfMillimetre, 1200.0);
    ruler.aside_mm = ruler.aside_to_mm = 1.0; // the half millimetres end 0.65 mm from the line drawn at first
    const RulerScale scale = scale_of(folder, ruler);
    EXPECT_EQ(scale.graduation, Graduation::HalfMillimetre);
    EXPECT_NEAR(scale.px_per_mm, ruler.look.px_per_mm_x, 1e-4 * ruler.look.px_per_mm_x);
}

TEST(RulerScale, DeviationGrowsWithTheScatterOfTheMarks) {
    const TemporaryFolder folder;
    RandomRuler ruler = plain_ruler(Graduation::Millimetre, 1200.0);
    const RulerScale clear = scale_of(folder, ruler);
    ruler.look.placing_mm = 0.02;
    const RulerScale rough = scale_of(folder, ruler);
    EXPECT_NEAR(rough.scatter_mm, 0.02, 0.01);
    EXPECT_GT(rough.relative_sd, 3.0 * clear.relative_sd);
    // Of a straight line through n points at equal steps: scatter sqrt(12) / n^1.5.
    EXPECT_NEAR(rough.relative_sd / (rough.scatter_mm * std::sqrt(12.0) / std::pow(rough.marks, 1.5)), 1.0, 0.5);
}

TEST(RulerScale, EqualMarksNeedAWord) {
    const TemporaryFolder folder;
    RandomRuler ruler = plain_ruler(Graduation::Millimetre, 1200.0);
    ruler.look.lengths_mm = {2.0};
    ruler.look.numerals = false;
    const RulerScan scan = scanned(folder, ruler);
    const auto asked = scale_along(scan.scan, scan.line, std::nullopt, std::nullopt);
    ASSERT_FALSE(asked.has_value());
    EXPECT_NE(asked.error().remedy.find("1/16in"), std::string::npos) << asked.error().line();
    const auto given = scale_along(scan.scan, scan.line, Graduation::Millimetre, std::nullopt);
    ASSERT_TRUE(given.has_value());
    EXPECT_EQ(given->basis, RulerScale::Basis::Given);
    const auto tag = Calibration::from_dpi(1230.0, 1230.0, Calibration::Source::FileTag).value();
    const auto by_tag = scale_along(scan.scan, scan.line, std::nullopt, tag);
    ASSERT_TRUE(by_tag.has_value());
    EXPECT_EQ(by_tag->basis, RulerScale::Basis::ToldScale);
    EXPECT_EQ(by_tag->graduation, Graduation::Millimetre);
    const auto other_tag = Calibration::from_dpi(900.0, 900.0, Calibration::Source::FileTag).value();
    EXPECT_FALSE(scale_along(scan.scan, scan.line, std::nullopt, other_tag).has_value());
}

TEST(RulerScale, PixelsThatAreNotSquareAreMeasuredByTwoRulers) {
    const TemporaryFolder folder;
    RandomRuler along_x = plain_ruler(Graduation::Millimetre, 1200.0);
    along_x.look.px_per_mm_y *= 1.02;
    along_x.look.tilt_deg = 3.0;
    along_x.look.seed = 5;
    RandomRuler along_y = along_x;
    along_y.look.tilt_deg = 92.0;
    along_y.look.seed = 6;
    std::vector<RulerScale> scales{scale_of(folder, along_x), scale_of(folder, along_y)};
    const auto both = calibration_by_rulers(Scan{}, scales, std::nullopt);
    ASSERT_TRUE(both.has_value()) << both.error().line();
    EXPECT_NEAR(both->px_per_mm_x, along_x.look.px_per_mm_x, 1e-4 * along_x.look.px_per_mm_x);
    EXPECT_NEAR(both->px_per_mm_y, along_x.look.px_per_mm_y, 1e-4 * along_x.look.px_per_mm_y);
}

TEST(RulerScale, IsTheSameFromColourDepthAndBlocks) {
    const TemporaryFolder folder;
    const RandomRuler ruler = plain_ruler(Graduation::Millimetre, 1200.0);
    const RenderedRuler rendered = rendered_ruler(ruler.look);
    cv::Mat deep;
    rendered.pixels.convertTo(deep, CV_16U, 257.0);
    write_raw(folder.file("deep.tif"), deep, {.kind = Written::Kind::TiffTiles});
    const auto scale = scale_along(ScanFile::open(folder.file("deep.tif")).value(), {rendered.from, rendered.to},
                                   std::nullopt, std::nullopt);
    ASSERT_TRUE(scale.has_value());
    EXPECT_NEAR(scale->px_per_mm, scale_of(folder, ruler).px_per_mm, 1e-6);
}

TEST(ScaleBetween, IsPixelsOverMillimetres) {
    Scan scan;
    scan.width = 6000;
    scan.height = 4000;
    const auto scale = scale_between(scan, {{100.0, 50.0}, {4824.4, 50.0}}, Millimetres(100.0), std::nullopt);
    ASSERT_TRUE(scale.has_value());
    EXPECT_NEAR(scale->px_per_mm, 47.244, 1e-9);
    EXPECT_NEAR(scale->relative_sd, std::sqrt(2.0) / 4724.4, 1e-9);
    // A slanting line on pixels twice as dense along y: 30 mm by 40 mm.
    const Calibration told{.px_per_mm_x = 50.0, .px_per_mm_y = 100.0};
    const auto slanting = scale_between(scan, {{0.0, 0.0}, {1500.0, 3999.0}}, Millimetres(50.0), told);
    ASSERT_TRUE(slanting.has_value());
    const auto calibration = calibration_by_rulers(scan, {*slanting}, told);
    ASSERT_TRUE(calibration.has_value());
    EXPECT_NEAR(calibration->px_per_mm_x, 50.0, 0.02);
    EXPECT_NEAR(calibration->px_per_mm_y, 100.0, 0.04);
}

} // namespace
} // namespace pithward::test
