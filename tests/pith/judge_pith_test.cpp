#include "libcore/measure/measure.h"
#include "libcore/pith/judge_pith.h"
#include "tests/pith/traced_stem.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace pithward {
namespace {

using test::traced_reading;
using test::TracedStem;

PithJudgement judged(const Reading& reading, const PithKnowledge& knowledge = {}) {
    return judge_pith(reading, measure(reading).value(), knowledge);
}

/// No number, and one finding that says why.
void expect_nothing(const PithJudgement& judgement, const std::string& why) {
    EXPECT_FALSE(judgement.pith);
    ASSERT_EQ(judgement.findings.size(), 1U);
    EXPECT_EQ(judgement.findings[0].kind, FindingKind::Pith);
    EXPECT_NE(judgement.findings[0].reason.find(why), std::string::npos) << judgement.findings[0].reason;
    EXPECT_FALSE(judgement.findings[0].proposal.empty());
}

TEST(JudgePith, OnCirclesTheCentreIsFound) {
    for (const double beside : {0.0, 2.0, 5.0, 12.0}) {
        TracedStem stem;
        stem.pith_x_mm = 14.0;
        stem.pith_y_mm = -beside;
        stem.noise_mm = 0.004;
        const PithJudgement judgement = judged(traced_reading(stem));
        ASSERT_TRUE(judgement.pith) << beside;
        const Pith& pith = *judgement.pith;
        const double distance = std::hypot(14.0, beside);
        const ImagePoint off = pith.at - pith_on_scan(stem);
        EXPECT_LT(std::hypot(off.x, off.y) / test::traced_px_per_mm, 0.08 * distance) << beside << " mm beside";
        EXPECT_LT(pith.distance_low.value(), distance);
        EXPECT_GT(pith.distance_high.value(), distance);
        EXPECT_FALSE(pith.inside);
        EXPECT_NEAR(pith.missing_rings, distance / 2.0, 1.6);
        EXPECT_TRUE(judgement.findings.empty()) << judgement.findings[0].reason;
    }
}

TEST(JudgePith, PublishedMethodsStandBeside) {
    TracedStem stem;
    stem.pith_x_mm = 10.0;
    const PithJudgement judgement = judged(traced_reading(stem), {Millimetres(30.0), {}});
    ASSERT_TRUE(judgement.pith);
    ASSERT_EQ(judgement.pith->others.size(), 3U);
    for (const OtherPith& other : judgement.pith->others) {
        EXPECT_FALSE(other.method.empty());
        if (other.method != "the stem's radius") {
            EXPECT_NEAR(other.distance.value(), 10.0, 0.4) << other.method;
            EXPECT_EQ(other.missing_rings, 5) << other.method;
        }
    }
}

TEST(JudgePith, AStemThatDisagreesIsAFinding) {
    TracedStem stem;
    stem.pith_x_mm = 10.0; // 16 mm of wood and 10 mm: no stem of 100 mm
    const PithJudgement judgement = judged(traced_reading(stem), {Millimetres(100.0), {}});
    ASSERT_TRUE(judgement.pith);
    ASSERT_EQ(judgement.findings.size(), 1U);
    EXPECT_NE(judgement.findings[0].reason.find("the stem's radius"), std::string::npos);
}

TEST(JudgePith, APithOnTheCoreIsSaidToBeThere) {
    TracedStem stem;
    stem.pith_x_mm = 1.6;
    stem.pith_y_mm = 0.3;
    stem.path_beyond_mm = 1.6;
    stem.noise_mm = 0.004;
    const Reading reading = traced_reading(stem);
    const RingSeries before = measure(reading).value();
    const Reading with = with_pith(reading, before);
    ASSERT_TRUE(with.pith);
    EXPECT_TRUE(with.pith->inside);
    EXPECT_EQ(with.pith->missing_rings, 0);
    const RingSeries after = measure(with).value();
    ASSERT_EQ(after.rings.size(), before.rings.size() + 1) << "N boundaries give N widths";
    EXPECT_NEAR(after.rings.back().width->value(), std::hypot(1.6, 0.3), 0.2);
    // Judging again does not take that ring for a measured one.
    const Reading again = with_pith(with, after);
    EXPECT_EQ(again.pith, with.pith);
    EXPECT_EQ(again.findings, with.findings);
}

TEST(JudgePith, APithThatWasSeenOnTheCoreStaysAndTheCurvesStandBeside) {
    TracedStem stem;
    stem.pith_x_mm = 2.2;
    stem.noise_mm = 0.004;
    Reading reading = traced_reading(stem);
    const ImagePoint seen = pith_on_scan(stem);
    reading.path.legs[0].points.back() = seen;
    reading.pith = Pith{true, seen, Millimetres(2.2), Millimetres(1.7), Millimetres(2.7)};
    const Reading with = with_pith(reading, measure(reading).value());
    ASSERT_TRUE(with.pith);
    EXPECT_EQ(with.pith->at, seen);
    EXPECT_EQ(with.pith->distance, Millimetres(2.2));
    EXPECT_EQ(with.pith->missing_rings, 0);
    ASSERT_FALSE(with.pith->others.empty());
    EXPECT_EQ(with.pith->others[0].method, "the curve of the rings");
    EXPECT_NEAR(with.pith->others[0].distance.value(), 2.2, 0.3);
    EXPECT_TRUE(with.findings.empty()) << with.findings[0].reason;

    Reading elsewhere = reading; // where the rings' curve does not put it
    elsewhere.pith->distance = Millimetres(5.0);
    elsewhere.pith->distance_low = Millimetres(4.5);
    elsewhere.pith->distance_high = Millimetres(5.5);
    const PithJudgement judgement = judged(elsewhere);
    EXPECT_TRUE(judgement.pith);
    EXPECT_FALSE(judgement.findings.empty());
}

TEST(JudgePith, OverlookedRingsNearAPithOnTheCoreAreNotPassedOverInSilence) {
    TracedStem stem;
    stem.pith_x_mm = 5.0;
    stem.path_beyond_mm = 5.0;
    stem.widths_mm = std::vector<double>(16, 1.0);
    stem.noise_mm = 0.004;
    const PithJudgement judgement = judged(traced_reading(stem));
    ASSERT_TRUE(judgement.pith);
    EXPECT_TRUE(judgement.pith->inside);
    EXPECT_NEAR(judgement.pith->missing_rings, 5, 2);
    ASSERT_FALSE(judgement.findings.empty());
}

TEST(JudgePith, OfFlatArcsNoNumberIsMadeUp) {
    TracedStem stem;
    stem.pith_x_mm = 3000.0;
    stem.noise_mm = 0.02;
    expect_nothing(judged(traced_reading(stem)), "too flat");
}

TEST(JudgePith, OfArcsThatBendTheWrongWayNoNumberIsMadeUp) {
    TracedStem stem;
    stem.noise_mm = 0.01;
    Reading reading = traced_reading(stem);
    for (Boundary& boundary : reading.boundaries) {
        for (ImagePoint& point : boundary.curve) {
            point.x = 2.0 * boundary.at.x - point.x;
        }
    }
    expect_nothing(judged(reading), "bend away");
}

TEST(JudgePith, OfArcsThatBendBothWaysNoNumberIsMadeUp) {
    TracedStem stem;
    stem.noise_mm = 0.01;
    Reading reading = traced_reading(stem);
    for (std::size_t k = 0; k < reading.boundaries.size(); k += 2) {
        for (ImagePoint& point : reading.boundaries[k].curve) {
            point.x = 2.0 * reading.boundaries[k].at.x - point.x;
        }
    }
    expect_nothing(judged(reading), "bend both ways");
}

TEST(JudgePith, OfTwoBoundariesNoNumberIsMadeUp) {
    Reading reading = traced_reading({});
    reading.boundaries.erase(reading.boundaries.begin(), reading.boundaries.end() - 2);
    expect_nothing(judged(reading), "two boundaries or fewer");
    reading.boundaries.clear();
    expect_nothing(judged(reading), "two boundaries or fewer");
}

TEST(JudgePith, WithoutCurvesNoNumberIsMadeUp) {
    Reading reading = traced_reading({});
    for (Boundary& boundary : reading.boundaries) {
        boundary.curve.clear();
    }
    expect_nothing(judged(reading), "could not be traced");
}

TEST(JudgePith, ACentreBeyondTheStemIsNone) {
    TracedStem stem;
    stem.pith_x_mm = 25.0;
    expect_nothing(judged(traced_reading(stem), {Millimetres(8.0), {}}), "beyond the stem");
}

TEST(JudgePith, CracksDoNotMoveThePith) {
    TracedStem stem;
    stem.pith_x_mm = 10.0;
    stem.noise_mm = 0.003;
    const double whole = judged(traced_reading(stem)).pith->distance.value();
    Reading cracked = traced_reading(stem);
    const ImagePoint apart{3.0 * test::traced_px_per_mm, 0.0};
    const ImagePoint at = cracked.boundaries[5].at; // the outer piece lies 3 mm further out
    for (std::size_t k = 0; k <= 5; ++k) {
        cracked.boundaries[k].at = cracked.boundaries[k].at - apart;
        for (ImagePoint& point : cracked.boundaries[k].curve) {
            point = point - apart;
        }
    }
    cracked.path.legs[0].points[0] = cracked.path.legs[0].points[0] - apart;
    Break crack;
    crack.id = BreakId{1};
    crack.kind = Break::Kind::Crack;
    crack.from = at - apart + ImagePoint{20.0, 0.0};
    crack.to = at + ImagePoint{20.0, 0.0};
    cracked.breaks.push_back(crack);
    EXPECT_NEAR(judged(cracked).pith->distance.value(), whole, 0.05);
}

TEST(WithPith, SettledFindingsStayAndOpenOnesAreJudgedAnew) {
    Reading reading = traced_reading({});
    Finding settled;
    settled.id = FindingId{4};
    settled.kind = FindingKind::Pith;
    settled.state = Finding::State::KeptAsItIs;
    Finding open = settled;
    open.id = FindingId{7};
    open.state = Finding::State::Open;
    reading.findings = {settled, open};
    reading.boundaries.erase(reading.boundaries.begin(), reading.boundaries.end() - 2);
    const Reading with = with_pith(reading, measure(reading).value());
    ASSERT_EQ(with.findings.size(), 2U);
    EXPECT_EQ(with.findings[0], settled);
    EXPECT_EQ(with.findings[1].id, FindingId{5});
}

} // namespace
} // namespace pithward
