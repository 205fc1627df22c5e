#include "libimaging/boundary/candidate_of.h"

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double wedging = 0.35;    ///< Support on the weaker side under which a ring wedges out.
constexpr double steep_slope = 0.7; ///< Movement along the path for each mm across.

} // namespace

Candidate candidate_of(const Mark& mark, double probability, const FlatStrip& strip, const StripGeometry& geometry) {
    Candidate candidate;
    const double s = strip.s(mark.column);
    candidate.at = geometry.image_point({s, 0.0});
    candidate.tangent = geometry.image_direction(s, mark.slope);
    candidate.sd = Millimetres(mark.sd_mm);
    candidate.confidence = probability;
    for (const TracePoint& point : mark.trace) {
        candidate.curve.push_back(geometry.image_point({point.s_mm, point.u_mm}));
    }
    if (mark.latewood_mm > 0.0) {
        candidate.latewood = Millimetres(mark.latewood_mm / std::hypot(1.0, mark.slope));
    }
    if (!mark.trace.empty() && std::min(mark.signs.support_left, mark.signs.support_right) < wedging) {
        candidate.flags.insert(Flag::Wedging);
    }
    if (std::abs(mark.slope) > steep_slope) {
        candidate.flags.insert(Flag::Steep);
    }
    return candidate;
}

} // namespace pithward::boundary
