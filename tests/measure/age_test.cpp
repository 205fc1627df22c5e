#include "libcore/measure/age.h"
#include "tests/measure/straight_reading.h"

#include <gtest/gtest.h>

namespace pithward {
namespace {

/// Rings of 2003, 2002 and 2001, and three more (2 to 5) to the pith.
Reading aged_reading() {
    Reading reading = test::straight_reading({1.0, 2.0, 3.0, 4.0});
    reading.last_year = Year(2003);
    Pith pith;
    pith.missing_rings = 3;
    pith.missing_low = 2;
    pith.missing_high = 5;
    reading.pith = pith;
    return reading;
}

TEST(AgeOf, PithYearIsTheOldestRingLessTheRingsToThePith) {
    const Reading reading = aged_reading();
    const auto year = pith_year(reading, test::measured(reading));
    ASSERT_TRUE(year);
    EXPECT_EQ(*year, (YearRange{Year(1998), Year(1996), Year(1999)}));
}

TEST(AgeOf, AnAllowanceGivesTheYearOfEstablishmentWithItsSpread) {
    const Reading reading = aged_reading();
    const auto age = age_of(reading, test::measured(reading), HeightAllowance{8.0, 2.0});
    ASSERT_TRUE(age && age->establishment);
    // 1998 - 8; sides sqrt(2^2 + (1.645 * 2)^2) = 3.85 and sqrt(1 + 3.29^2) = 3.44.
    EXPECT_EQ(*age->establishment, (YearRange{Year(1990), Year(1986), Year(1993)}));
    EXPECT_FALSE(age_of(reading, test::measured(reading), std::nullopt)->establishment);
}

TEST(AgeOf, NothingIsMadeUp) {
    Reading undated = aged_reading();
    undated.last_year.reset();
    EXPECT_FALSE(pith_year(undated, test::measured(undated)));
    Reading no_pith = aged_reading();
    no_pith.pith.reset();
    EXPECT_FALSE(pith_year(no_pith, test::measured(no_pith)));
    Reading floating = aged_reading();
    floating.breaks = {test::break_at(2.4, 2.6, Break::Kind::LostWood, std::nullopt)};
    EXPECT_FALSE(pith_year(floating, test::measured(floating))) << "nobody knows how many rings are gone";
}

} // namespace
} // namespace pithward
