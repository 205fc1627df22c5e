#pragma once

#include "demo-scans/maker/truth.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <optional>
#include <string>
#include <vector>

namespace pithward::accuracy {

/// What a method said of one core.
struct PithAnswer {
    double distance_mm = 0.0;
    double low_mm = 0.0;
    double high_mm = 0.0;
    int rings = 0;
    int rings_low = 0;
    int rings_high = 0;
};

/// The pith of one core as judged, beside the truth. Distances and rings count from the innermost boundary that the
/// program found, so rings that it overlooked there are missing ones.
struct PithScore {
    std::string name;
    bool inside = false; ///< In truth.
    bool said_inside = false;
    double offset_mm = 0.0; ///< How far the core's line misses the pith sideways.
    double width_mm = 0.0;  ///< True mean of the innermost five rings on the core.
    double distance_mm = 0.0;
    int rings = 0;
    int findings = 0;               ///< Of kind pith.
    std::optional<PithAnswer> ours; ///< Nothing where no number was given.
    std::optional<PithAnswer> duncan;
    std::optional<PithAnswer> applequist;
};

/// Judges the pith of a reading and scores it. The reading has a boundary.
[[nodiscard]] PithScore pith_score(const demo::Truth& truth, const Reading& reading, const RingSeries& series);

} // namespace pithward::accuracy
