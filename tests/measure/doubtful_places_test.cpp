#include "libcore/measure/doubtful_places.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

Candidate candidate_at(double s_mm, double confidence) {
    Candidate candidate;
    candidate.at = straight_reading({s_mm}).boundaries.front().at;
    candidate.confidence = confidence;
    return candidate;
}

Reading dated_reading() {
    Reading reading = straight_reading({0.5, 2.0, 3.0});
    reading.last_year = Year(2023);
    reading.boundaries[1].confidence = 0.9;
    reading.not_annual = {candidate_at(1.2, 0.3), candidate_at(3.4, 0.4)};
    return reading;
}

std::vector<DoubtfulPlace> places_of(const Reading& reading) {
    return doubtful_places(reading, measured(reading)).value();
}

TEST(DoubtfulPlaces, ACandidateIsInTheRingAroundIt) {
    const auto places = places_of(dated_reading());
    ASSERT_EQ(places.size(), 5U) << "the candidate inside of the innermost boundary is in no ring";
    EXPECT_EQ(places[0].ring, Year(2023));
    EXPECT_TRUE(places[0].too_few);
    EXPECT_DOUBLE_EQ(places[0].probability, 0.3);
    EXPECT_NEAR(places[0].s.value(), 1.2, 1e-9);
    EXPECT_TRUE(std::holds_alternative<ProposeBoundary>(places[0].change));
}

TEST(DoubtfulPlaces, ABoundaryMayBeNoneAndTheTreeMayHaveLaidNone) {
    Reading reading = dated_reading();
    const auto places = places_of(reading);
    EXPECT_EQ(places[1].ring, Year(2023)) << "the ring whose inner boundary it is";
    EXPECT_FALSE(places[1].too_few);
    EXPECT_NEAR(places[1].probability, 0.1, 1e-12);
    EXPECT_EQ(std::get<ProposeRemoval>(places[1].change).boundary, reading.boundaries[1].id);
    EXPECT_TRUE(places[2].too_few);
    EXPECT_EQ(std::get<ProposeAbsentRing>(places[2].change).at, reading.boundaries[1].id);
    reading.boundaries[1].confirmation = Confirmation::LookedAt;
    EXPECT_LT(places_of(reading)[1].probability, 0.01);
}

TEST(DoubtfulPlaces, RingsWithoutYearsHaveNone) {
    Reading reading = dated_reading();
    reading.last_year = std::nullopt;
    EXPECT_TRUE(places_of(reading).empty());
    EXPECT_TRUE(places_of(straight_reading({})).empty());
}

} // namespace
} // namespace pithward::test
