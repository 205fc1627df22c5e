#pragma once

#include "libcore/specimen/boundary.h"
#include "libcore/specimen/break.h"
#include "libcore/specimen/path.h"

#include <compare>
#include <cstddef>
#include <cstdint>

namespace pithward {

/// Where something stands on a path, to put things in order from bark to pith: by leg, then by the distance to its foot
/// along the leg in pixels, then by its id, so that no two objects of a list are ever equal.
struct PathOrder {
    std::size_t leg = 0;
    double s_px = 0.0;
    std::int64_t id = 0;
    friend auto operator<=>(const PathOrder&, const PathOrder&) = default;
};

/// Distance from a leg's first point to the foot of a place on it, in pixels; 0 on a leg of fewer than two points.
[[nodiscard]] double along_leg_px(const Leg& leg, ImagePoint at);

/// A leg that the path does not have yet gives a distance of 0.
[[nodiscard]] PathOrder path_order(const Path& path, const Boundary& boundary);
[[nodiscard]] PathOrder path_order(const Path& path, const Candidate& candidate);
/// A break stands where its bark-side edge is.
[[nodiscard]] PathOrder path_order(const Path& path, const Break& stretch);

} // namespace pithward
