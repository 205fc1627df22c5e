#pragma once

#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <optional>
#include <vector>

namespace pithward {

/// What one ring adds to the stem's cross-section, mm^2, with the 90 % interval that the distance to the pith leaves.
struct BasalAreaIncrement {
    double mm2 = 0.0;
    double low_mm2 = 0.0;
    double high_mm2 = 0.0;
    friend bool operator==(const BasalAreaIncrement&, const BasalAreaIncrement&) = default;
};

/// Basal area increment of each ring of a series: pi (R^2 - r^2), R and r the radii of its outer and inner edge, added
/// up from the pith outward (common practice of the trade). Rings are taken as circles about the pith, and the wood as
/// it was measured, dry and without bark. A locally absent ring has 0; one without a width, and all outside it, have
/// nothing, and so have all without a pith.
[[nodiscard]] std::vector<std::optional<BasalAreaIncrement>> basal_area_increments(const Reading& reading,
                                                                                   const RingSeries& series);

} // namespace pithward
