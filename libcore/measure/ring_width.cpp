#include "libcore/measure/ring_width.h"

#include "libcore/specimen/units.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pithward {

namespace {

/// Angle from the path's direction to the normal of a boundary, in (-pi/2, pi/2].
double angle_to_normal(double path, double tangent) {
    double angle = line_direction(tangent + 0.5 * std::numbers::pi - path);
    if (angle > 0.5 * std::numbers::pi) {
        angle -= std::numbers::pi;
    }
    return angle;
}

} // namespace

RingWidth ring_width(const RingEdges& edges) {
    const WoodVector chord = edges.inner - edges.outer;
    const double path = std::atan2(chord.y, chord.x);
    const double first = angle_to_normal(path, edges.outer_tangent);
    const double second = angle_to_normal(path, edges.inner_tangent);
    const double mean = 0.5 * (first + second);
    // Two boundaries of one ring can't cross: a difference beyond a right angle is an error of a direction, not of the
    // wood.
    const double difference = std::min(std::abs(second - first), 0.5 * std::numbers::pi);
    const double cosine = std::cos(mean) / std::cos(0.5 * difference);
    RingWidth out;
    out.width_mm = edges.along_path_mm * cosine;
    out.sd_mm = std::hypot(cosine * std::hypot(edges.outer_sd_mm, edges.inner_sd_mm),
                           edges.along_path_mm * std::sin(mean) * tilt_sd);
    return out;
}

} // namespace pithward
