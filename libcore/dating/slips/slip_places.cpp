#include "libcore/dating/slips/slip_places.h"

#include <algorithm>

namespace pithward::dating {

namespace {

double odds(double probability) {
    const double held = std::clamp(probability, 1e-4, 0.98);
    return held / (1.0 - held);
}

double expected_in(const Alignment& alignment, bool missing, int year) {
    const Eigen::ArrayXd& by_year = missing ? alignment.missing : alignment.extra;
    const int k = year - alignment.first_year;
    return k < 0 || k >= by_year.size() ? 0.0 : by_year(k);
}

/// `shift`: what the slips further out add to the years that the reading gives.
std::vector<SlipPlace> places_of(const Slip& slip, const Alignment& alignment, std::span<const DoubtfulPlace> places,
                                 int shift, std::size_t most) {
    const bool missing = slip.kind == Slip::Kind::RingMissing;
    std::vector<SlipPlace> found;
    double sum = 0.0;
    for (const DoubtfulPlace& place : places) {
        const int year = place.ring.value() + shift;
        if (place.too_few != missing || !looked_at_for(slip, year)) {
            continue;
        }
        const double weight = expected_in(alignment, missing, year) * odds(place.probability);
        sum += weight;
        Slip here = slip;
        here.year = year;
        found.push_back({place, here.ring_year(), weight});
    }
    std::ranges::stable_sort(found, std::ranges::greater(), &SlipPlace::probability);
    found.resize(std::min(found.size(), most));
    for (SlipPlace& place : found) {
        place.probability = sum > 0.0 ? slip.probability * place.probability / sum : 0.0;
    }
    return found;
}

} // namespace

bool looked_at_for(const Slip& slip, int year) {
    constexpr int beside = 8;
    return year >= slip.from - beside && year <= slip.to + beside;
}

int shift_inside(const Slip& slip) {
    return slip.kind == Slip::Kind::RingMissing ? -1 : 1;
}

std::vector<std::vector<SlipPlace>> slip_places(std::span<const Slip> slips, const Alignment& alignment,
                                                int whole_shift, std::span<const DoubtfulPlace> places,
                                                std::size_t most) {
    std::vector<std::vector<SlipPlace>> result;
    result.reserve(slips.size());
    int shift = whole_shift;
    for (const Slip& slip : slips) {
        result.push_back(places_of(slip, alignment, places, shift, most));
        shift += shift_inside(slip);
    }
    return result;
}

} // namespace pithward::dating
