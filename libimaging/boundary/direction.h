#pragma once

#include "libimaging/boundary/flat_strip.h"

#include <string>

namespace pithward::boundary {

/// Which way a strip runs.
struct Direction {
    double log_odds = 0.0; ///< That it runs from bark to pith.
    std::string how;       ///< What tells it: "polarity" or "curvature".
};

/// Log odds that a conifer strip runs from bark to pith by its polarity: its sharp changes darken on the way inward,
/// its soft ones lighten. From the steepest tenth of all changes of the profile, of either sign.
[[nodiscard]] double polarity_log_odds(const FlatStrip& strip);

/// The same by the curve of the rings: they bend round the pith, so a ring that is met off the path lies further
/// inward.
[[nodiscard]] double curvature_log_odds(const FlatStrip& strip);

/// Both together; `how` names the stronger.
[[nodiscard]] Direction direction_of(const FlatStrip& strip);

} // namespace pithward::boundary
