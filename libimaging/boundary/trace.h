#pragma once

#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/mark.h"

#include <vector>

namespace pithward::boundary {

/// Follows marks across the strip and refines their places at the path.
///
/// In each group of lanes the shift is sought that fits the group's values best to the profile around the mark (least
/// squares on the profile's gradient; the estimator with the least variance for a known shape in white noise). A robust
/// line or parabola through the shifts gives the place and the direction at the path, and their deviation. Each mark's
/// `column`, `sd_mm`, `slope`, `trace` and the supports of its signs are set. `values` is what the profile was made of;
/// `reach` half the breadth of the window in columns, one for each mark.
void trace_marks(const FlatStrip& strip, const cv::Mat1f& values, const std::vector<float>& profile,
                 const std::vector<double>& reach, std::vector<Mark>& marks);

} // namespace pithward::boundary
