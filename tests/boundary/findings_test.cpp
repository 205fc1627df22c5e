#include "libimaging/boundary/findings.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace pithward::boundary {
namespace {

/// Ten boundaries a millimetre apart on a path along x, at 10 px/mm, the fourth ring broken.
Reading broken_reading() {
    Reading reading;
    reading.path.legs = {Leg{"scan.png", {{0.0, 0.0}, {200.0, 0.0}}, {}}};
    reading.calibrations["scan.png"] = Calibration{10.0, 10.0, 0.0, Calibration::Source::Given};
    for (int k = 0; k < 10; ++k) {
        Boundary boundary;
        boundary.id = BoundaryId{k + 1};
        boundary.at = {10.0 * k, 0.0};
        boundary.confidence = k == 0 ? 0.6 : 0.99;
        reading.boundaries.push_back(boundary);
    }
    Break crack;
    crack.id = BreakId{1};
    crack.from = {33.0, 0.0};
    crack.to = {36.0, 0.0};
    reading.breaks = {crack};
    return reading;
}

std::ptrdiff_t count_of(const Reading& reading, FindingKind kind) {
    return std::ranges::count(reading.findings, kind, &Finding::kind);
}

const WoodJudgement sure_conifer{WoodType::Conifer, 1.0, "given"};

TEST(Findings, AskWhetherABreakHidesABoundaryWhereTheRingIsTooWide) {
    ProposedRings rings{std::vector<double>(9, 1.0), {3}};
    Reading usual = broken_reading();
    add_findings(usual, rings, {}, false, sure_conifer);
    EXPECT_EQ(count_of(usual, FindingKind::PossiblyOverlooked), 0);

    rings.width_mm[3] = 1.8;
    Reading wide = broken_reading();
    add_findings(wide, rings, {}, false, sure_conifer);
    ASSERT_EQ(count_of(wide, FindingKind::PossiblyOverlooked), 1);
    const auto asked = std::ranges::find(wide.findings, FindingKind::PossiblyOverlooked, &Finding::kind);
    EXPECT_EQ(asked->at.x, 0.5 * (wide.breaks[0].from.x + wide.breaks[0].to.x));
    EXPECT_FALSE(asked->to) << "one place, however long the break is";
}

TEST(Findings, TellARunOfRingsOfAFewPixelsAsOneStretch) {
    ProposedRings rings{std::vector<double>(9, 1.0), {3}};
    rings.width_mm[2] = rings.width_mm[3] = 0.4; // at 10 px/mm
    Reading two = broken_reading();
    add_findings(two, rings, {}, false, sure_conifer);
    EXPECT_EQ(count_of(two, FindingKind::PossiblyOverlooked), 0);

    rings.width_mm[4] = rings.width_mm[8] = 0.4;
    Reading three = broken_reading();
    add_findings(three, rings, {}, false, sure_conifer);
    ASSERT_EQ(count_of(three, FindingKind::PossiblyOverlooked), 1);
    const auto told = std::ranges::find(three.findings, FindingKind::PossiblyOverlooked, &Finding::kind);
    EXPECT_EQ(told->at, three.boundaries[2].at);
    ASSERT_TRUE(told->to.has_value());
    EXPECT_EQ(*told->to, three.boundaries[5].at);
}

TEST(Findings, AskAboutTheOutermostBoundaryOnce) {
    const ProposedRings rings{std::vector<double>(9, 1.0), {3}};
    Reading judged = broken_reading();
    add_findings(judged, rings, {}, false, sure_conifer);
    EXPECT_EQ(count_of(judged, FindingKind::OuterWood), 1);
    EXPECT_EQ(count_of(judged, FindingKind::PossiblyFalse), 0);

    Reading told = broken_reading();
    add_findings(told, rings, {}, true, sure_conifer);
    EXPECT_EQ(count_of(told, FindingKind::OuterWood), 0);
    EXPECT_EQ(count_of(told, FindingKind::PossiblyFalse), 1);
}

TEST(Findings, AskAboutBoundariesOfLessThanNineteenInTwenty) {
    const ProposedRings rings{std::vector<double>(9, 1.0), {}};
    const auto asked = [&](double confidence) {
        Reading reading = broken_reading();
        reading.boundaries[2].confidence = confidence;
        add_findings(reading, rings, {}, true, sure_conifer);
        return std::ranges::any_of(reading.findings, [&](const Finding& finding) {
            return finding.kind == FindingKind::PossiblyFalse && finding.boundary == reading.boundaries[2].id;
        });
    };
    EXPECT_TRUE(asked(0.94));
    EXPECT_FALSE(asked(0.96));
}

} // namespace
} // namespace pithward::boundary
