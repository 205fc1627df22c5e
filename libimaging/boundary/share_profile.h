#pragma once

#include "libimaging/boundary/flat_strip.h"

#include <opencv2/core.hpp>

#include <vector>

namespace pithward::boundary {

/// The value in each column that `share` (0 to 1) of the lanes stay below, lanes weighted as in `profile`. A line that
/// crosses the core moves all lanes and so any such value; what is strewn over a part of the lanes leaves the values
/// beyond it where they are. Columns without wood get the value of the nearest before them that has, else after them.
[[nodiscard]] std::vector<float> share_profile(const FlatStrip& strip, const cv::Mat1f& values, double share);

} // namespace pithward::boundary
