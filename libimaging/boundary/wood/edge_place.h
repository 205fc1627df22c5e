#pragma once

#include "libimaging/boundary/falls.h"

#include <vector>

namespace pithward::boundary {

/// Blur of a profile in columns, not under `least`: the sharpest of the strong changes are blurred steps. A step under
/// a Gaussian of standard deviation b has a breadth (height over steepest gradient) of b times the root of 2 pi.
[[nodiscard]] double blur_of(const std::vector<Fall>& falls, double least);

/// The place of a fall, by a fit of a blurred edge before a dark zone of about `dark_columns` (0 where that is not
/// known); the half-level where the fit fails. The half-level of a thin line lies too far on its light side.
[[nodiscard]] double edge_column(const std::vector<float>& brightness, const Fall& fall, double blur,
                                 double dark_columns);

} // namespace pithward::boundary
