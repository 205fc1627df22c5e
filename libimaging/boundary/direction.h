#pragma once

#include "libimaging/boundary/flat_strip.h"

namespace pithward::boundary {

/// Log odds that a conifer strip runs from bark to pith: its steep changes darken on the way inward and its soft ones
/// lighten. From the steepest tenth of all changes of the profile, of either sign.
[[nodiscard]] double bark_first_log_odds(const FlatStrip& strip);

} // namespace pithward::boundary
