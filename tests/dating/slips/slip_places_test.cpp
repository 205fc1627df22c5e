#include "libcore/dating/slips/find_slips.h"
#include "libcore/dating/slips/slip_places.h"
#include "tests/dating/made_up.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

using namespace dating;

DoubtfulPlace place_in(int ring, bool too_few, double probability) {
    DoubtfulPlace place;
    place.ring = Year(ring);
    place.too_few = too_few;
    place.probability = probability;
    return place;
}

/// Each ring with what the wood says of any: nothing in particular.
std::vector<DoubtfulPlace> quiet_wood() {
    std::vector<DoubtfulPlace> places;
    for (int year = 1801; year < 2000; ++year) {
        places.push_back(place_in(year, true, 0.001));
        places.push_back(place_in(year, false, 0.01));
    }
    return places;
}

std::vector<std::vector<SlipPlace>> places_for(const SeriesSlips& found, const std::vector<DoubtfulPlace>& wood) {
    return slip_places(found.slips, found.alignment, found.whole_shift, wood);
}

TEST(SlipPlaces, AFaintBoundaryDrawsTheSlipWithinItsRange) {
    auto site = made_up_site({.trees = 10, .cores = 2, .first_year = 1800, .years = 200, .r = 0.75});
    lose_ring(site[0].widths, 1900);
    const SeriesSlips found = find_slips(site, {})[0];
    ASSERT_EQ(found.slips.size(), 1U);
    ASSERT_GT(found.slips[0].to, found.slips[0].from) << "the dates alone leave several years";
    const auto plain = places_for(found, quiet_wood());
    EXPECT_EQ(plain[0][0].ring_year, found.slips[0].ring_year());
    auto wood = quiet_wood();
    wood.push_back(place_in(found.slips[0].from, true, 0.4));
    const auto joined = places_for(found, wood);
    EXPECT_EQ(joined[0][0].place, wood.back());
    EXPECT_EQ(joined[0][0].ring_year, found.slips[0].from - 1);
    EXPECT_GT(joined[0][0].probability, 0.5);
    EXPECT_LE(joined[0].size(), 3U);
}

TEST(SlipPlaces, ADoubtfulBoundaryElsewhereDoesNotDrawIt) {
    auto site = made_up_site({.trees = 10, .cores = 2, .first_year = 1800, .years = 200, .r = 0.75});
    split_ring(site[0].widths, 1900, 0.4);
    const SeriesSlips found = find_slips(site, {})[0];
    ASSERT_EQ(found.slips.size(), 1U);
    auto wood = quiet_wood();
    wood.push_back(place_in(1850, false, 0.9));
    wood.push_back(place_in(1900, true, 0.9)); // A ring more would not help.
    EXPECT_EQ(places_for(found, wood)[0][0].place, place_in(1900, false, 0.01));
}

TEST(SlipPlaces, ASlipFurtherInIsLookedForByTheYearsOfTheReading) {
    auto site = made_up_site({.trees = 10, .cores = 2, .first_year = 1800, .years = 200, .r = 0.75});
    merge_rings(site[0].widths, 1860);
    merge_rings(site[0].widths, 1930);
    const SeriesSlips found = find_slips(site, {})[0];
    ASSERT_EQ(found.slips.size(), 2U);
    // The reading is a ring short outside of the second slip: it dates the merged ring of 1860 to 1861.
    auto wood = quiet_wood();
    wood.push_back(place_in(1861, true, 0.4));
    const auto joined = places_for(found, wood);
    EXPECT_EQ(joined[1][0].place, wood.back());
    EXPECT_EQ(joined[1][0].ring_year, 1859);
}

TEST(SlipPlaces, NoWoodNoPlace) {
    auto site = made_up_site({.trees = 10, .cores = 2, .first_year = 1800, .years = 200, .r = 0.75});
    merge_rings(site[0].widths, 1900);
    const SeriesSlips found = find_slips(site, {})[0];
    EXPECT_TRUE(places_for(found, {}).at(0).empty());
}

} // namespace
} // namespace pithward::test
