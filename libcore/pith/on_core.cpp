#include "libcore/pith/on_core.h"

#include <cmath>

namespace pithward::pith {

namespace {

constexpr double beyond_end_mm = 0.5; ///< A path to the pith may end a little before it.
constexpr double better_part = 0.8;   ///< Of a ring's width.

} // namespace

bool on_core(const InnerArcs& inner, const PithPosterior& posterior, const DistanceRange& ours, double width_mm) {
    double probability = 0.0;
    for (const PithPlace& place : posterior.places()) {
        const Eigen::Vector2d at = place.at();
        const bool here = std::abs(at.y()) < inner.half_breadth_mm && at.x() < inner.path_end_mm + beyond_end_mm;
        probability += here ? place.probability : 0.0;
    }
    const bool goes_on = inner.path_end_mm > better_part * width_mm;
    return probability > 0.5 || (goes_on && inner.path_end_mm > ours.low_mm && inner.path_end_mm < *ours.high_mm);
}

} // namespace pithward::pith
