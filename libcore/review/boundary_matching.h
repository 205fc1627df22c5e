#pragma once

#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <utility>
#include <vector>

namespace pithward::review {

/// A boundary where it lies, with how far it may lie from its twin.
struct MarkedPlace {
    const Boundary* boundary = nullptr;
    const std::string* scan = nullptr;
    const Calibration* scale = nullptr;
    double reach_mm = 0.0; ///< Half of the way to its nearer neighbour, from 0.05 to 1 mm.
};

/// The boundaries of a reading with their places; those of legs without a scale are left out.
[[nodiscard]] std::vector<MarkedPlace> marked_places(const Reading& reading, const RingSeries& series);

/// The way from one boundary to another on the same scan, square to both, mm. The square is taken to the mean of their
/// tangents: the chord between two places of one circle stands square to the mean of the radii there, so two marks of
/// one round ring are 0 apart however far along the ring they lie.
[[nodiscard]] double way_across_mm(const MarkedPlace& a, const MarkedPlace& b);

/// Pairs of indices, rising in both lists, that have the least sum of squared ways by the reach, where a boundary
/// without a twin costs 1/2; so twins are never further apart than the smaller reach.
[[nodiscard]] std::vector<std::pair<std::size_t, std::size_t>> matched_places(const std::vector<MarkedPlace>& a,
                                                                              const std::vector<MarkedPlace>& b);

} // namespace pithward::review
