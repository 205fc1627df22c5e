#pragma once

#include "libcore/specimen/ids.h"
#include "libcore/specimen/units.h"

#include <string>
#include <variant>
#include <vector>

namespace pithward {

/// Two legs meet at one and the same ring boundary, which has a mark on each of them.
struct JoinedAtBoundary {
    BoundaryId on_previous;
    BoundaryId on_this;
    friend bool operator==(const JoinedAtBoundary&, const JoinedAtBoundary&) = default;
};

/// Two legs meet at a break.
struct JoinedAtBreak {
    BreakId at;
    friend bool operator==(const JoinedAtBreak&, const JoinedAtBreak&) = default;
};

/// How a leg follows the one before it; the first leg follows nothing.
using Join = std::variant<std::monostate, JoinedAtBoundary, JoinedAtBreak>;

/// A polyline on one scan.
struct Leg {
    std::string scan; ///< The scan's file name, as the reading's calibrations are keyed by.
    std::vector<ImagePoint> points;
    Join joined_by;
    friend bool operator==(const Leg&, const Leg&) = default;
};

/// The way of a measurement through the wood, from bark to pith: ordered legs. A path ends at the pith; a core that
/// goes past the pith gives two paths and two readings.
struct Path {
    std::vector<Leg> legs;
    friend bool operator==(const Path&, const Path&) = default;
};

} // namespace pithward
