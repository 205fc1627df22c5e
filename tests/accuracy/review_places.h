#pragma once

#include "libcore/specimen/finding.h"
#include "tests/accuracy/placed_truth.h"

#include <cstddef>
#include <span>
#include <vector>

namespace pithward::accuracy {

/// A boundary that a reading proposes, on the true path.
struct Proposed {
    std::size_t boundary = 0; ///< Index into the reading's boundaries.
    double s_px = 0.0;
    double confidence = 0.0;
};

/// A confidence below this asks for a look.
inline constexpr double sure = 0.8;

/// Where a reading asks somebody to look.
struct ReviewPlaces {
    std::vector<bool> asked;    ///< For each proposed boundary: it is unsure, or a finding is within 2 px.
    std::vector<double> all_px; ///< These boundaries and the findings elsewhere, along the path. Findings within 2 px
                                ///< of one before are the same place; one over a stretch is a place each 0.25 mm.

    /// Whether there is one between two places, both included.
    [[nodiscard]] bool any_between(double from_px, double to_px) const;
};

[[nodiscard]] ReviewPlaces review_places(const PlacedTruth& truth, std::span<const Proposed> proposed,
                                         std::span<const Finding> findings);

} // namespace pithward::accuracy
