#include "libcore/field/depth.h"

#include "libcore/measure/age.h"

#include <algorithm>
#include <cmath>

namespace pithward::field {

namespace {

constexpr double breast_height_cm = 130.0;
constexpr double taper_mm_per_m = 10.0; ///< Of the diameter.
constexpr double unknown_height_m = 1.0;
constexpr double unknown_bark = 0.05; ///< Of the diameter.
constexpr double eccentric = 0.1;
constexpr double least_shrinkage = 0.02;
constexpr double most_shrinkage = 0.06;
constexpr double mm_per_cm = 10.0;
constexpr double cm_per_m = 100.0;

std::string whole_mm(double mm) {
    return std::to_string(std::lround(mm)) + " mm";
}

std::string between(const DepthRange& range) {
    return whole_mm(range.low_mm) + " to " + whole_mm(range.high_mm);
}

} // namespace

std::optional<DepthRange> wood_radius(const Tree& tree, const Core& core) {
    if (!tree.dbh_cm) {
        return std::nullopt;
    }
    const double half = 0.5 * mm_per_cm * *tree.dbh_cm;
    const double apart_m =
        core.core_height_cm ? (breast_height_cm - *core.core_height_cm) / cm_per_m : unknown_height_m;
    const double taper = 0.5 * taper_mm_per_m * apart_m;
    // Below breast height the stem may be thicker, above it thinner.
    const double thicker = core.core_height_cm ? std::max(0.0, taper) : taper;
    const double thinner = core.core_height_cm ? std::max(0.0, -taper) : taper;
    const double least_bark = tree.bark_mm.value_or(0.0);
    const double most_bark = tree.bark_mm.value_or(2.0 * unknown_bark * half);
    return DepthRange{std::max(0.0, (half - most_bark - thinner) * (1.0 - eccentric)),
                      std::max(0.0, (half - least_bark + thicker) * (1.0 + eccentric))};
}

DepthRange fresh_depth(double dry_low_mm, double dry_high_mm) {
    return {dry_low_mm / (1.0 - least_shrinkage), dry_high_mm / (1.0 - most_shrinkage)};
}

std::optional<Remark> depth_remark(const Tree& tree, const Core& core, const Reading& reading,
                                   const RingSeries& series) {
    const auto radius = wood_radius(tree, core);
    if (!radius || !reading.pith || reading.outer == OuterWood::Lost || pith_floats(reading)) {
        return std::nullopt;
    }
    double length = series.outer_partial.value_or(Millimetres()).value();
    for (const Ring& ring : series.rings) {
        if (!ring.width) {
            return std::nullopt;
        }
        length += ring.width->value();
    }
    // With the pith on the core and no ring missing the innermost width runs to it already.
    const Pith& pith = *reading.pith;
    const bool counted = pith.inside && pith.missing_rings == 0;
    const DepthRange depth = counted
                                 ? fresh_depth(length, length)
                                 : fresh_depth(length + pith.distance_low.value(), length + pith.distance_high.value());
    if (depth.low_mm <= radius->high_mm && radius->low_mm <= depth.high_mm) {
        return std::nullopt;
    }
    return Remark{"from bark to pith it is " + between(depth) + " by this core, but " + between(*radius) +
                      " by the stem's diameter",
                  "check the diameter, the bark, the scale and the pith", 0.6, Remark::End::Inner};
}

} // namespace pithward::field
