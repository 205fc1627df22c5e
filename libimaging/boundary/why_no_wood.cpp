#include "libimaging/boundary/why_no_wood.h"

namespace pithward::boundary {

namespace {

// Limits: wood of all kinds stays well on one side, see docs/accuracy.md.
constexpr double along = -0.5;
constexpr double too_regular = 0.8;
constexpr double too_even = 0.6;
constexpr double nothing = 0.002;
constexpr double no_grain = 0.01; ///< Rendered wood has 0.06 and more.
constexpr double too_two_sided = 1.8;
constexpr double one_way_of_noise = 0.28;
constexpr double one_way_weight = 3.0;
constexpr double confused = 0.4;
constexpr double slanted = -0.4;
constexpr double one_body = 0.75; ///< What goes on across the path so well is wood, however its edges blur.
constexpr double long_enough_mm = 25.0;

} // namespace

std::optional<std::string> why_no_wood(const WoodSigns& signs, WoodType type, double path_mm) {
    if (signs.contrast < nothing) {
        return "it is of one even tone";
    }
    if (signs.grain < no_grain) {
        return "it has no grain at all, as print has none and wood always does";
    }
    if (signs.across < along) {
        return "what lies there runs along the path, as rings do that it does not cross, or a mount's grain";
    }
    if (path_mm < long_enough_mm) {
        return std::nullopt;
    }
    if (signs.regular > too_regular) {
        return "what lies there repeats itself evenly, as cloth or graduations do and rings don't";
    }
    if (signs.paper > too_even) {
        return "what lies there is of one even tone with dark marks, as print is";
    }
    const bool is_noise = signs.agreement + one_way_weight * (signs.one_way - one_way_of_noise) < confused;
    const bool is_slant = signs.aligned < slanted && signs.agreement < one_body;
    if (is_noise || is_slant) {
        return "what lies on one side of the path does not go on on the other, as rings would";
    }
    if (type == WoodType::Conifer && signs.agreement < one_body && signs.one_sided < too_two_sided) {
        return "its changes are as sharp on one side as on the other, which those of rings are not";
    }
    return std::nullopt;
}

} // namespace pithward::boundary
