#include "libimaging/calibrate/ruler_calibration.h"
#include "libimaging/calibrate/scale_findings.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::test {
namespace {

RulerScale ruler(double direction_deg, double px_per_mm, double relative_sd = 0.0001) {
    RulerScale scale;
    scale.line = {{0.0, 0.0}, {1000.0, 0.0}};
    scale.normal = {std::cos(radians(direction_deg)), std::sin(radians(direction_deg))};
    scale.px_per_mm = px_per_mm;
    scale.relative_sd = relative_sd;
    scale.graduation = Graduation::Millimetre;
    scale.marks = 40;
    return scale;
}

Calibration tag(double dpi_x, double dpi_y) {
    return Calibration::from_dpi(dpi_x, dpi_y, Calibration::Source::FileTag).value();
}

Reading reading_along(ImagePoint from, ImagePoint to) {
    Reading reading;
    reading.path.legs = {Leg{"scan", {from, to}, {}}};
    reading.findings.emplace_back().id = FindingId{1}; // one is there already
    return reading;
}

TEST(RulerCalibration, OneRulerGivesBothScalesByTheirRatio) {
    const auto square = calibration_by_rulers(Scan{}, {ruler(0.0, 46.0)}, std::nullopt);
    ASSERT_TRUE(square.has_value());
    EXPECT_DOUBLE_EQ(square->px_per_mm_x, 46.0);
    EXPECT_DOUBLE_EQ(square->px_per_mm_y, 46.0);
    const auto by_tag = calibration_by_rulers(Scan{}, {ruler(0.0, 46.0)}, tag(1200.0, 2400.0));
    ASSERT_TRUE(by_tag.has_value());
    EXPECT_DOUBLE_EQ(by_tag->px_per_mm_y, 92.0);
    EXPECT_EQ(by_tag->for_path({}).source, Calibration::Source::Ruler);
}

TEST(RulerCalibration, TwoRulersGiveTheirOwn) {
    // At 3 and 95 degrees on pixels of 46 by 47 to the millimetre.
    const auto at = [](double degrees) {
        return std::hypot(46.0 * std::cos(radians(degrees)), 47.0 * std::sin(radians(degrees)));
    };
    const auto both = calibration_by_rulers(Scan{}, {ruler(3.0, at(3.0)), ruler(95.0, at(95.0))}, tag(1200.0, 2400.0));
    ASSERT_TRUE(both.has_value());
    EXPECT_NEAR(both->px_per_mm_x, 46.0, 1e-9);
    EXPECT_NEAR(both->px_per_mm_y, 47.0, 1e-9);
}

TEST(RulerCalibration, IsSureAlongTheRulerAndLessSoAcross) {
    const auto one = calibration_by_rulers(Scan{}, {ruler(0.0, 46.0)}, std::nullopt).value();
    const double own = std::hypot(0.0001, assumed_ruler_sd);
    EXPECT_NEAR(one.for_path({{0.0, 0.0}, {900.0, 0.0}}).relative_sd, own, 1e-9);
    EXPECT_NEAR(one.for_path({{0.0, 900.0}, {0.0, 0.0}}).relative_sd, std::hypot(own, assumed_ratio_sd), 1e-9);
    const auto two = calibration_by_rulers(Scan{}, {ruler(0.0, 46.0), ruler(90.0, 46.0)}, std::nullopt).value();
    EXPECT_NEAR(two.for_path({{0.0, 900.0}, {0.0, 0.0}}).relative_sd, own, 1e-9);
}

TEST(RulerCalibration, RefusesWhatCannotBeJoined) {
    EXPECT_FALSE(calibration_by_rulers(Scan{}, {}, std::nullopt));
    EXPECT_FALSE(calibration_by_rulers(Scan{}, {ruler(0.0, 46.0), ruler(4.0, 46.0)}, std::nullopt));
    EXPECT_FALSE(calibration_by_rulers(Scan{}, {ruler(0.0, 46.0), ruler(180.0, 46.0)}, std::nullopt));
    EXPECT_FALSE(calibration_by_rulers(Scan{}, {ruler(0.0, 1.0)}, std::nullopt));
    EXPECT_FALSE(calibration_by_rulers(Scan{}, {ruler(0.0, 1e6)}, std::nullopt));
    // Rulers that contradict each other: no scales in x and y give both.
    EXPECT_FALSE(calibration_by_rulers(Scan{}, {ruler(40.0, 20.0), ruler(75.0, 90.0)}, std::nullopt));
}

TEST(ScaleFindings, ARulerThatDisagreesWithTheTagIsOne) {
    for (const double off : {-0.02, -0.006, 0.006, 0.02}) {
        Reading reading = reading_along({0.0, 0.0}, {900.0, 0.0});
        const auto told = tag(1200.0, 1200.0);
        const auto rulers = calibration_by_rulers(Scan{}, {ruler(0.0, told.px_per_mm_x * (1.0 + off))}, told).value();
        add_scale_findings(reading, rulers, told);
        ASSERT_EQ(reading.findings.size(), 2U) << off;
        EXPECT_EQ(reading.findings[1].kind, FindingKind::Scale);
        EXPECT_EQ(reading.findings[1].id, FindingId{2});
        EXPECT_NE(reading.findings[1].reason.find("47.24"), std::string::npos);
        EXPECT_NE(reading.findings[1].reason.find(std::abs(off) > 0.01 ? "2.0 %" : "0.6 %"), std::string::npos)
            << reading.findings[1].reason;
        EXPECT_FALSE(reading.findings[1].proposal.empty());
    }
}

TEST(ScaleFindings, ARulerThatAgreesIsNone) {
    const auto told = tag(1200.0, 1200.0);
    for (const double off : {-0.004, 0.0, 0.004}) {
        Reading reading = reading_along({0.0, 0.0}, {900.0, 0.0});
        const auto rulers = calibration_by_rulers(Scan{}, {ruler(0.0, told.px_per_mm_x * (1.0 + off))}, told).value();
        add_scale_findings(reading, rulers, told);
        EXPECT_EQ(reading.findings.size(), 1U);
    }
    // Two points placed by hand on a short stretch say too little.
    EXPECT_FALSE(disagreement(ruler(0.0, told.px_per_mm_x * 1.01, 0.008), told).has_value());
}

TEST(ScaleFindings, NamesTheGraduationThatWouldAgree) {
    const auto told = tag(1200.0, 1200.0);
    const auto differs = disagreement(ruler(0.0, 0.5 * told.px_per_mm_x), told);
    ASSERT_TRUE(differs.has_value());
    EXPECT_NE(differs->otherwise.find("0.5mm"), std::string::npos) << differs->otherwise;
}

TEST(ScaleFindings, MarksThatContradictTheGraduationGiven) {
    Reading reading = reading_along({0.0, 0.0}, {900.0, 0.0});
    RulerScale scale = ruler(0.0, 47.0);
    scale.graduation_by_mark_lengths = Graduation::SixteenthInch;
    add_scale_findings(reading, calibration_by_rulers(Scan{}, {scale}, std::nullopt).value(), std::nullopt);
    ASSERT_EQ(reading.findings.size(), 2U);
    EXPECT_NE(reading.findings[1].reason.find("1/16in"), std::string::npos);
}

TEST(ScaleFindings, ACoreAcrossTheOnlyRuler) {
    Reading reading = reading_along({0.0, 900.0}, {30.0, 0.0});
    const auto one = calibration_by_rulers(Scan{}, {ruler(0.0, 47.0)}, std::nullopt).value();
    add_scale_findings(reading, one, std::nullopt);
    ASSERT_EQ(reading.findings.size(), 2U);
    EXPECT_NE(reading.findings[1].reason.find("across"), std::string::npos);
    Reading measured = reading_along({0.0, 900.0}, {30.0, 0.0});
    const auto two = calibration_by_rulers(Scan{}, {ruler(0.0, 47.0), ruler(90.0, 47.0)}, std::nullopt).value();
    add_scale_findings(measured, two, std::nullopt);
    EXPECT_EQ(measured.findings.size(), 1U);
}

} // namespace
} // namespace pithward::test
