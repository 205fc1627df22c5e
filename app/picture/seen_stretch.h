#pragma once

#include "app/picture/view_transform.h"
#include "libcore/specimen/reading.h"

#include <string>

namespace pithward::picture {

/// A stretch of a path as it lies between the two sides of a lane, in shares of the path's length: 0 where the path
/// begins, 1 where it ends; beyond both goes on. It runs backward (from > to) where the path does.
struct Stretch {
    double from = 0.0; ///< At the left side.
    double to = 1.0;   ///< At the right side.

    /// Share of the lane's width, from the left, at which a share of the path lies; and the other way.
    [[nodiscard]] double x_of(double share) const { return (share - from) / (to - from); }
    [[nodiscard]] double share_at(double x) const { return from + x * (to - from); }
};

/// The stretch of a path's legs that a view shows, so that what is in the middle of the one is in the middle of the
/// other. For a path that runs up or down, from the top of the view to its bottom. What lies on other scans is beyond.
/// The whole path when none of it is on this scan.
[[nodiscard]] Stretch seen_stretch(const Reading& reading, const std::string& scan, const ViewTransform& view);

} // namespace pithward::picture
