#include "libcore/measure/measure.h"
#include "libcore/pith/judge_pith.h"
#include "libcore/pith/pith_by_hand.h"
#include "tests/pith/traced_stem.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward {
namespace {

using test::pith_on_scan;
using test::traced_reading;
using test::TracedStem;

Outcome<Pith> placed(const Reading& reading, ImagePoint at) {
    return pith_by_hand(reading, measure(reading).value(), at);
}

TEST(PithByHand, TellsDistanceAndRings) {
    TracedStem stem;
    stem.pith_x_mm = 10.0;
    stem.pith_y_mm = -3.0;
    const auto pith = placed(traced_reading(stem), pith_on_scan(stem));
    ASSERT_TRUE(pith);
    EXPECT_FALSE(pith->inside);
    EXPECT_EQ(pith->source, Pith::Source::Hand);
    EXPECT_NEAR(pith->distance.value(), std::hypot(10.0, 3.0), 0.05);
    EXPECT_LT(pith->distance_low, pith->distance);
    EXPECT_GT(pith->distance_high, pith->distance);
    EXPECT_NEAR(pith->missing_rings, 5, 1); // rings of 2 mm
    EXPECT_LE(pith->missing_low, pith->missing_rings);
    EXPECT_GE(pith->missing_high, pith->missing_rings);
}

TEST(PithByHand, OnTheCoreNoRingIsMissing) {
    TracedStem stem;
    stem.pith_x_mm = 1.8;
    stem.path_beyond_mm = 1.8;
    const auto pith = placed(traced_reading(stem), pith_on_scan(stem));
    ASSERT_TRUE(pith);
    EXPECT_TRUE(pith->inside);
    EXPECT_EQ(pith->missing_rings, 0);
}

TEST(PithByHand, IsRefusedInWordsWhereItCannotBe) {
    TracedStem stem;
    stem.pith_x_mm = 10.0;
    const Reading reading = traced_reading(stem);
    TracedStem behind = stem;
    behind.pith_x_mm = -4.0;
    const auto on_bark_side = placed(reading, pith_on_scan(behind));
    ASSERT_FALSE(on_bark_side);
    EXPECT_NE(on_bark_side.error().what.find("bark's side"), std::string::npos);
    TracedStem far = stem;
    far.pith_x_mm = 200.0;
    const auto too_far = placed(reading, pith_on_scan(far));
    ASSERT_FALSE(too_far);
    EXPECT_NE(too_far.error().what.find("too flat"), std::string::npos);
}

TEST(PithByHand, AnArcThroughARingsPlacesHasItsCentreAtThePith) {
    TracedStem stem;
    stem.pith_x_mm = 10.0;
    Reading reading = traced_reading(stem);
    const Boundary& innermost = reading.boundaries.back();
    for (const ImagePoint through : {innermost.curve.front(), innermost.curve.back()}) {
        const auto centre = centre_of_arc(reading, innermost, through);
        ASSERT_TRUE(centre);
        const ImagePoint off = *centre - pith_on_scan(stem);
        EXPECT_LT(std::hypot(off.x, off.y), 0.4 * test::traced_px_per_mm);
    }
    EXPECT_FALSE(centre_of_arc(reading, innermost, innermost.at));
}

TEST(PithByHand, IsKeptWhenThePithIsJudgedAnew) {
    TracedStem stem;
    stem.pith_x_mm = 10.0;
    Reading reading = traced_reading(stem);
    TracedStem elsewhere = stem;
    elsewhere.pith_x_mm = 7.0;
    reading.pith = placed(reading, pith_on_scan(elsewhere)).value();
    const Reading judged = with_pith(reading, measure(reading).value());
    ASSERT_TRUE(judged.pith);
    EXPECT_EQ(judged.pith->at, reading.pith->at);
    EXPECT_EQ(judged.pith->source, Pith::Source::Hand);
    EXPECT_FALSE(judged.pith->others.empty()) << "the curves stand beside it";
    EXPECT_EQ(judged.pith->others[0].method, "the curve of the rings");
    // With the innermost boundary gone the pith is further from the one before it.
    Reading shorter = judged;
    shorter.boundaries.pop_back();
    const Reading again = with_pith(shorter, measure(shorter).value());
    EXPECT_NEAR(again.pith->distance.value(), judged.pith->distance.value() + 2.0, 0.1);
}

TEST(PithByHand, InnerRingsFillTheDistanceEvenly) {
    Pith pith;
    pith.distance = Millimetres(6.0);
    pith.missing_rings = 3;
    EXPECT_EQ(inner_ring_radii(pith), (std::vector<double>{2.0, 4.0, 6.0}));
    pith.missing_rings = 0;
    EXPECT_TRUE(inner_ring_radii(pith).empty());
}

TEST(JudgePith, WhatWasSettledIsNotRaisedAgain) {
    TracedStem stem;
    stem.pith_x_mm = 10.0;
    const PithKnowledge knowledge{Millimetres(100.0), {}};
    Reading reading = traced_reading(stem);
    reading = with_pith(reading, measure(reading).value(), knowledge);
    ASSERT_EQ(reading.findings.size(), 1U);
    reading.findings[0].state = Finding::State::KeptAsItIs;
    const Reading again = with_pith(reading, measure(reading).value(), knowledge);
    EXPECT_EQ(again.findings, reading.findings);
}

} // namespace
} // namespace pithward
