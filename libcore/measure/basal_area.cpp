#include "libcore/measure/basal_area.h"

#include "libcore/measure/age.h"

#include <numbers>

namespace pithward {

namespace {

double ring_area(double inner_mm, double width_mm) {
    return std::numbers::pi * width_mm * (2.0 * inner_mm + width_mm);
}

} // namespace

std::vector<std::optional<BasalAreaIncrement>> basal_area_increments(const Reading& reading, const RingSeries& series) {
    std::vector<std::optional<BasalAreaIncrement>> areas(series.rings.size());
    if (!reading.pith || pith_floats(reading)) {
        return areas;
    }
    // With the pith on the core and no ring missing the innermost width runs to it, so it begins at 0.
    const Pith& pith = *reading.pith;
    const bool from_pith = pith.inside && pith.missing_rings == 0;
    double inner = from_pith ? 0.0 : pith.distance.value();
    double low = from_pith ? 0.0 : pith.distance_low.value();
    double high = from_pith ? 0.0 : pith.distance_high.value();
    for (std::size_t i = series.rings.size(); i-- > 0 && series.rings[i].width;) {
        const double width = series.rings[i].width->value();
        areas[i] = BasalAreaIncrement{ring_area(inner, width), ring_area(low, width), ring_area(high, width)};
        inner += width;
        low += width;
        high += width;
    }
    return areas;
}

} // namespace pithward
