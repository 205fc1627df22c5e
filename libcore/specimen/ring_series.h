#pragma once

#include "libcore/specimen/ids.h"
#include "libcore/specimen/units.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace pithward {

/// One year's growth on a reading's path. Three things are never mixed: a width; 0, a locally absent ring; nothing, a
/// gap.
struct Ring {
    std::optional<Year> year;
    int number = 0;                   ///< 1 for the outermost ring, counted inward, absent and lost rings included.
    std::optional<Millimetres> width; ///< Square to the boundaries.
    std::optional<Millimetres> along_path; ///< Along the path, less cracks.
    Millimetres sd;                        ///< Own part of the width's standard deviation; 0 where there is no width.
    bool absent = false;
    std::optional<Millimetres> earlywood;
    std::optional<Millimetres> latewood;
    friend bool operator==(const Ring&, const Ring&) = default;
};

/// Where a boundary lies along the whole path, and the ring that it closes.
struct PlacedBoundary {
    BoundaryId id;
    Millimetres s;            ///< Along the path from its first point, breaks included, legs added up.
    std::optional<Year> year; ///< The ring that ends here on its bark side.
    int ring_number = 0;
    friend bool operator==(const PlacedBoundary&, const PlacedBoundary&) = default;
};

/// What a reading means: its rings from bark to pith.
struct RingSeries {
    std::vector<Ring> rings;
    std::vector<PlacedBoundary> boundaries;   ///< One for each boundary of the reading, in path order.
    std::optional<Millimetres> outer_partial; ///< Breadth of an unfinished ring outside the first boundary.
    double calibration_relative_sd = 0.0;     ///< Common to all rings; added only to sums.
    friend bool operator==(const RingSeries&, const RingSeries&) = default;
};

} // namespace pithward
