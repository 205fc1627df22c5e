#pragma once

#include "libcore/measure/leg_line.h"

namespace pithward {

/// Two neighbouring boundaries of one ring, on the wood.
struct RingEdges {
    WoodVector outer;
    WoodVector inner;
    double outer_tangent = 0.0; ///< Radians.
    double inner_tangent = 0.0;
    double along_path_mm = 0.0; ///< Path length between them, cracks taken off.
    double outer_sd_mm = 0.0;
    double inner_sd_mm = 0.0;
};

struct RingWidth {
    double width_mm = 0.0;
    double sd_mm = 0.0;
};

/// Width of a ring square to its boundaries.
///
/// With a the mean of the angles between the path and the two normals, and d their difference, the width is L cos a /
/// cos(d/2), L the length along the path. For parallel boundaries this is L times the cosine; for arcs about one centre
/// it is exactly the difference of the two distances to that centre (law of sines in the triangle of the centre and the
/// two places). The deviation joins that of the two places and `tilt_sd` of the mean angle.
[[nodiscard]] RingWidth ring_width(const RingEdges& edges);

/// Standard deviation of a boundary's direction, radians (assumed: 1 degree).
inline constexpr double tilt_sd = 0.0175;

} // namespace pithward
