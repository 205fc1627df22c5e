#pragma once

#include "libcore/specimen/edit.h"

namespace pithward {

// Whether every place and measure of a value is a finite number. What is none can't be put in order, compared or drawn.

[[nodiscard]] bool is_finite(const Boundary& boundary);
[[nodiscard]] bool is_finite(const Candidate& candidate);
[[nodiscard]] bool is_finite(const Break& stretch);
[[nodiscard]] bool is_finite(const AbsentRing& ring);
[[nodiscard]] bool is_finite(const Finding& finding);
[[nodiscard]] bool is_finite(const Path& path);
[[nodiscard]] bool is_finite(const ReadingHead& head);
/// A scale must be above 0 too, since lengths are divided by it.
[[nodiscard]] bool is_finite(const Calibration& scale);

} // namespace pithward
