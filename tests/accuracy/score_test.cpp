// What the figures of accuracy mean, on cores made up by hand: 50 px a millimetre, a straight path, a boundary each 2
// mm.
#include "libcore/measure/measure.h"
#include "tests/accuracy/figures.h"
#include "tests/accuracy/pairing.h"

#include <gtest/gtest.h>

#include <numbers>

namespace pithward::accuracy {
namespace {

constexpr double px_per_mm = 50.0;
constexpr int last_year = 2020;

ImagePoint at(double s_px) {
    return {1000.0 + s_px, 300.0};
}

demo::Truth truth_at(const std::vector<double>& places_px) {
    demo::Truth truth;
    truth.dpi = px_per_mm * Calibration::millimetres_per_inch;
    truth.path = {at(0.0), at(1000.0)};
    for (const double place : places_px) {
        const Year year = Year(last_year) - static_cast<int>(truth.boundaries.size());
        if (!truth.boundaries.empty()) {
            const double width_mm = (at(place).x - truth.boundaries.back().at.x) / px_per_mm;
            truth.widths.push_back({year + 1, width_mm, width_mm});
        }
        demo::TrueBoundary boundary;
        boundary.at = at(place);
        boundary.year = year;
        truth.boundaries.push_back(boundary);
    }
    return truth;
}

Reading reading_at(const std::vector<double>& places_px) {
    Reading reading;
    reading.path.legs = {Leg{"scan", {at(0.0), at(1000.0)}, {}}};
    reading.calibrations["scan"] = {.px_per_mm_x = px_per_mm, .px_per_mm_y = px_per_mm};
    reading.last_year = Year(last_year);
    for (const double place : places_px) {
        Boundary boundary;
        boundary.id = BoundaryId{static_cast<std::int64_t>(reading.boundaries.size()) + 1};
        boundary.at = at(place);
        boundary.tangent = 0.5 * std::numbers::pi;
        boundary.sd = Millimetres(0.02);
        boundary.confidence = 0.99;
        reading.boundaries.push_back(boundary);
    }
    return reading;
}

Finding finding_at(double from_px, std::optional<double> to_px = std::nullopt) {
    Finding finding;
    finding.at = at(from_px);
    if (to_px) {
        finding.to = at(*to_px);
    }
    return finding;
}

Candidate turned_down(double s_px, double confidence) {
    Candidate candidate;
    candidate.at = at(s_px);
    candidate.confidence = confidence;
    return candidate;
}

CaseScore score_of(const demo::Truth& truth, const Reading& reading) {
    return case_score(truth, reading, measure(reading).value());
}

TEST(Score, ABoundaryWithinReachIsRightAndOneBeyondIsFalse) {
    // A quarter of the ring is 25 px, 0.15 mm are 7.5.
    const demo::Truth truth = truth_at({100.0, 200.0, 300.0});
    const CaseScore right = score_of(truth, reading_at({101.0, 207.4, 299.0}));
    EXPECT_EQ(right.found, 3);
    EXPECT_TRUE(right.mistakes.empty());
    EXPECT_NEAR(right.errors_px.at(1), 7.4, 1e-9);
    EXPECT_NEAR(right.position_z.at(0), 1.0, 1e-9) << "1 px is 0.02 mm";

    const CaseScore wrong = score_of(truth, reading_at({101.0, 207.6, 299.0}));
    EXPECT_EQ(wrong.found, 2);
    EXPECT_EQ(wrong.rings(), 3);
    EXPECT_EQ(wrong.count(Mistake::Kind::False), 1);
    EXPECT_EQ(wrong.count(Mistake::Kind::Overlooked), 1);
    EXPECT_EQ(wrong.escaped(), 2);
    EXPECT_NEAR(f1_of(wrong), 2.0 / 3.0, 1e-9);
}

TEST(Score, NarrowRingsHaveANarrowReachOfAtLeastTwoPixels) {
    const demo::Truth truth = truth_at({100.0, 112.0, 116.0, 300.0});
    EXPECT_EQ(score_of(truth, reading_at({102.9, 112.0, 118.0, 300.0})).found, 4);
    EXPECT_EQ(score_of(truth, reading_at({103.1, 112.0, 118.1, 300.0})).found, 2);
}

TEST(Score, PairingTakesTheMostPairsAndThenTheNearest) {
    const std::vector<TruePlace> truth{{0, 100.0, 2.0}, {1, 103.0, 2.0}};
    // 101.5 is nearer to neither; only in this order both have one.
    const std::vector<Pair> both = paired(truth, std::vector{101.5, 104.9});
    ASSERT_EQ(both.size(), 2U);
    EXPECT_EQ(both[0].found, 0U);
    const std::vector<Pair> nearest = paired(truth, std::vector{98.5, 100.5, 102.5, 103.6});
    ASSERT_EQ(nearest.size(), 2U);
    EXPECT_EQ(nearest[0].found, 1U);
    EXPECT_EQ(nearest[1].found, 2U);
}

TEST(Score, WhatCannotBeSeenIsNeitherRightNorWrong) {
    demo::Truth truth = truth_at({100.0, 102.5, 200.0, 300.0});
    truth.boundaries[2].visible = false;
    truth.boundaries[2].why_invisible = "chunk";
    truth.bark_edge = at(50.0);
    const CaseScore score = score_of(truth, reading_at({51.0, 100.0, 103.0, 201.0, 300.0}));
    EXPECT_EQ(score.rings(), 2);
    EXPECT_EQ(score.found, 2);
    EXPECT_TRUE(score.mistakes.empty());
    EXPECT_EQ(score.chances.size(), 2U);
}

TEST(Score, AMistakeIsCaughtByALookUpToTheTrueBoundariesBesideIt) {
    const demo::Truth truth = truth_at({100.0, 200.0, 300.0, 400.0});
    Reading reading = reading_at({100.0, 200.0, 250.0, 400.0}); // one false, one overlooked
    EXPECT_EQ(score_of(truth, reading).escaped(), 2);
    reading.findings = {finding_at(390.0)};
    EXPECT_EQ(score_of(truth, reading).escaped(), 1) << "shows the overlooked one only";
    reading.findings = {finding_at(260.0)};
    EXPECT_EQ(score_of(truth, reading).escaped(), 0);
    reading.findings = {finding_at(150.0)};
    EXPECT_EQ(score_of(truth, reading).escaped(), 2);
    reading.findings.clear();
    reading.boundaries[2].confidence = 0.79;
    EXPECT_EQ(score_of(truth, reading).escaped(), 0);
}

TEST(Score, APlaceToLookAtCountsOnce) {
    const demo::Truth truth = truth_at({100.0, 200.0, 300.0});
    Reading reading = reading_at({100.0, 200.0, 300.0});
    EXPECT_EQ(score_of(truth, reading).places, 0);
    reading.boundaries[1].confidence = 0.5;
    reading.findings = {finding_at(201.0), finding_at(250.0), finding_at(251.0)};
    EXPECT_EQ(score_of(truth, reading).places, 2) << "an unsure boundary with its finding, and a place with two";
    reading.findings = {finding_at(210.0, 210.0 + 1.01 * px_per_mm)};
    EXPECT_EQ(score_of(truth, reading).places, 6) << "a stretch of a millimetre is five places";
}

TEST(Score, WidthsAreJudgedByTheirDeviations) {
    demo::Truth truth = truth_at({100.0, 200.0, 200.0, 300.0, 400.0});
    truth.boundaries[1].visible = false;
    truth.boundaries[1].why_invisible = "absent";
    Reading reading = reading_at({100.0, 201.0, 300.0, 400.0});
    const CaseScore score = score_of(truth, reading);
    ASSERT_EQ(score.width_z.size(), 3U);
    const RingSeries series = measure(reading).value();
    EXPECT_NEAR(score.width_z[0], 1.0 / px_per_mm / series.rings[0].sd.value(), 1e-6);
    truth.widths.back().radial_mm.reset();
    EXPECT_EQ(score_of(truth, reading).width_z.size(), 2U) << "lost wood touches the innermost ring";
}

TEST(Score, CandidatesTurnedDownCountForTheConfidence) {
    const demo::Truth truth = truth_at({100.0, 200.0, 300.0});
    Reading reading = reading_at({100.0, 300.0});
    reading.not_annual = {turned_down(201.0, 0.4), turned_down(250.0, 0.02)};
    const CaseScore score = score_of(truth, reading);
    const Figures figures = figures_of(std::vector{score});
    EXPECT_EQ(figures.confidence.candidates, 3) << "one is under 0.05";
    EXPECT_NEAR(figures.confidence.expected.value(), (0.6 + 2 * 0.01) / 3, 1e-9);
    EXPECT_EQ(figures.doubtful.candidates, 1);
    EXPECT_NEAR(figures.doubtful.expected.value(), 0.6, 1e-9) << "it is a boundary, overlooked";
}

TEST(Score, CoresArePooledByTheirBoundaries) {
    const demo::Truth truth = truth_at({100.0, 200.0, 300.0});
    const std::vector cores{score_of(truth, reading_at({100.0, 201.0, 303.0})), score_of(truth, reading_at({100.0})),
                            unread(truth)};
    const Figures figures = figures_of(cores);
    EXPECT_EQ(figures.rings, 9);
    EXPECT_NEAR(figures.f1.value(), 2.0 * 4 / (2.0 * 4 + 5), 1e-9);
    EXPECT_EQ(figures.worst_f1, 0.0);
    EXPECT_NEAR(figures.escaped.value(), 100.0 * 5 / 9, 1e-9);
    EXPECT_NEAR(figures.error_px.value(), 0.5, 1e-9);
    EXPECT_NEAR(figures.bias_px.value(), 0.5, 1e-9);
}

} // namespace
} // namespace pithward::accuracy
