#include "libcore/field/lean.h"

#include <cmath>

namespace pithward::field {

namespace {

constexpr double too_near_deg = 60.0;

std::string whole_degrees(double degrees) {
    return std::to_string(std::lround(degrees)) + " degrees";
}

/// Whether the borer entered on the side that the stem leans to.
bool enters_below(double azimuth_deg, double lean_deg) {
    return std::cos(radians(azimuth_deg - lean_deg)) > 0.0;
}

std::string reaction_wood(WoodType wood, bool below) {
    if (wood == WoodType::Conifer) {
        return below ? "compression wood is likely, on the side that the stem leans to"
                     : "compression wood may lie on the far side, that the stem leans to";
    }
    return below ? "tension wood may lie on the far, upper side" : "tension wood is likely, on the upper side";
}

} // namespace

double angle_to_line(double azimuth_deg, double line_deg) {
    return std::abs(std::remainder(azimuth_deg - line_deg, 180.0));
}

std::optional<Remark> lean_remark(const Tree& tree, const Core& core, WoodType wood) {
    if (!core.azimuth_deg || (tree.lean_deg && *tree.lean_deg == 0.0)) {
        return std::nullopt;
    }
    if (tree.lean_azimuth_deg) {
        const double angle = angle_to_line(*core.azimuth_deg, *tree.lean_azimuth_deg);
        if (angle >= too_near_deg) {
            return std::nullopt;
        }
        return Remark{"the core was taken " + whole_degrees(angle) + " from the line of lean: " +
                          reaction_wood(wood, enters_below(*core.azimuth_deg, *tree.lean_azimuth_deg)),
                      "compare its widths with a core square to the lean, and leave it out where they differ", 0.7};
    }
    if (tree.slope_aspect_deg && angle_to_line(*core.azimuth_deg, *tree.slope_aspect_deg) < too_near_deg) {
        return Remark{"no lean is noted, and the core was taken " +
                          whole_degrees(angle_to_line(*core.azimuth_deg, *tree.slope_aspect_deg)) +
                          " from the line of the slope's fall: reaction wood is possible",
                      "note the lean (0 where there is none); core along the contour next time", 0.3};
    }
    return std::nullopt;
}

} // namespace pithward::field
