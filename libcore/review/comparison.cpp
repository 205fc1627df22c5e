#include "libcore/review/comparison.h"

#include "libcore/review/boundary_matching.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <set>

namespace pithward::review {

namespace {

constexpr std::size_t most_boundaries = 5'000;

/// The ring between a boundary and the next one inward, by the boundary's id.
std::map<BoundaryId, const Ring*> rings_by_outer_boundary(const RingSeries& series) {
    std::map<int, const Ring*> by_number;
    for (const Ring& ring : series.rings) {
        by_number[ring.number] = &ring;
    }
    std::map<BoundaryId, const Ring*> rings;
    for (const PlacedBoundary& placed : series.boundaries) {
        const auto found = by_number.find(placed.ring_number);
        if (found != by_number.end()) {
            rings[placed.id] = found->second;
        }
    }
    return rings;
}

std::size_t ring_count(const std::vector<MarkedPlace>& places) {
    return places.empty() ? 0 : places.size() - 1;
}

std::vector<BoundaryId> left_over(const std::vector<MarkedPlace>& places, const std::set<BoundaryId>& taken) {
    std::vector<BoundaryId> ids;
    for (const MarkedPlace& place : places) {
        if (!taken.contains(place.boundary->id)) {
            ids.push_back(place.boundary->id);
        }
    }
    return ids;
}

void add_widths(Comparison& comparison, const std::vector<double>& differences) {
    comparison.widths = static_cast<int>(differences.size());
    if (differences.empty()) {
        return;
    }
    const double count = static_cast<double>(differences.size());
    double sum = 0.0;
    for (const double difference : differences) {
        sum += difference;
    }
    const double mean = sum / count;
    comparison.bias = Millimetres(mean);
    if (differences.size() < 2) {
        return;
    }
    double squares = 0.0;
    for (const double difference : differences) {
        squares += (difference - mean) * (difference - mean);
    }
    comparison.sd = Millimetres(std::sqrt(squares / (count - 1.0)));
    comparison.sd_of_one = *comparison.sd / std::numbers::sqrt2;
}

bool share_a_scan(const Reading& first, const Reading& second) {
    return std::ranges::any_of(first.path.legs, [&](const Leg& leg) {
        return std::ranges::any_of(second.path.legs, [&](const Leg& other) { return other.scan == leg.scan; });
    });
}

} // namespace

Outcome<Comparison> compare(const ComparedReading& first, const ComparedReading& second) {
    if (!share_a_scan(first.reading, second.reading)) {
        return fail("", "the two readings have no scan in common", "compare readings of one scan");
    }
    if (std::max(first.reading.boundaries.size(), second.reading.boundaries.size()) > most_boundaries) {
        return fail("", "a reading has more than 5,000 boundaries", "check that it is one core");
    }
    const auto places = marked_places(first.reading, first.series);
    const auto others = marked_places(second.reading, second.series);
    const auto pairs = matched_places(places, others);
    Comparison comparison;
    std::set<BoundaryId> taken_first;
    std::set<BoundaryId> taken_second;
    for (const auto& [i, j] : pairs) {
        const BoundaryId one = places[i].boundary->id;
        const BoundaryId other = others[j].boundary->id;
        comparison.matched.emplace_back(one, other);
        taken_first.insert(one);
        taken_second.insert(other);
    }
    comparison.only_first = left_over(places, taken_first);
    comparison.only_second = left_over(others, taken_second);

    const auto rings = rings_by_outer_boundary(first.series);
    const auto other_rings = rings_by_outer_boundary(second.series);
    std::vector<double> differences;
    differences.reserve(pairs.size());
    for (std::size_t k = 0; k + 1 < pairs.size(); ++k) {
        if (pairs[k + 1].first != pairs[k].first + 1 || pairs[k + 1].second != pairs[k].second + 1) {
            continue;
        }
        ++comparison.agreeing_rings;
        const auto ring = rings.find(comparison.matched[k].first);
        const auto other = other_rings.find(comparison.matched[k].second);
        if (ring == rings.end() || other == other_rings.end()) {
            continue;
        }
        const Ring& a = *ring->second;
        const Ring& b = *other->second;
        comparison.years_differ += a.year && b.year && *a.year != *b.year ? 1 : 0;
        if (a.width && b.width) {
            differences.push_back((*b.width - *a.width).value());
        }
    }
    if (const std::size_t all = ring_count(places) + ring_count(others); all > 0) {
        comparison.share_agreeing = 2.0 * comparison.agreeing_rings / static_cast<double>(all);
    }
    add_widths(comparison, differences);
    return comparison;
}

} // namespace pithward::review
