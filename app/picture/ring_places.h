#pragma once

#include "app/picture/measured_core.h"

#include <optional>
#include <string>

namespace pithward::picture {

/// Between rings and places on the scan: what ties the scan and the plot together.

/// The ring under an image point, when the point lies within `reach_px` of the path on this scan.
[[nodiscard]] std::optional<int> ring_at(const MeasuredCore& core, const std::string& scan, ImagePoint at,
                                         double reach_px);

/// The ring at a distance along the path from its first point.
[[nodiscard]] std::optional<int> ring_at_place(const MeasuredCore& core, Millimetres place);

/// The middle of a ring on the path; of an absent ring, the boundary where it lies. Nothing on another scan.
[[nodiscard]] std::optional<ImagePoint> place_of_ring(const MeasuredCore& core, const std::string& scan, int number);

/// The leg that a ring lies on, where its outer boundary is; nothing when there is no such ring.
[[nodiscard]] std::optional<std::size_t> leg_of_ring(const MeasuredCore& core, int number);

/// The ring of a number, counted from the bark; null when there is none.
[[nodiscard]] const Ring* ring_of(const RingSeries& series, int number);

/// The distance from an image point to the path on this scan, in pixels; nothing when the path is elsewhere.
[[nodiscard]] std::optional<double> distance_to_path(const Reading& reading, const std::string& scan, ImagePoint at);

} // namespace pithward::picture
