#pragma once

#include "libimaging/boundary/relief.h"
#include "libimaging/strip/lanes.h"

#include <opencv2/core.hpp>

namespace pithward::boundary {

/// How the rings run across the strip: for each lane and each place on the path, how far along the path (mm) the ring
/// that crosses the path there has moved by the time it reaches the lane. Zero in the centre lane.
///
/// The slope is sought by least squares from the gradients of neighbouring lanes, first of the broad features, then of
/// ever finer ones, each time on the strip flattened by what is known so far (plane-wave slopes, as used for layered
/// images in seismology).
[[nodiscard]] cv::Mat1f ring_flow(const Relief& relief, const Lanes& lanes);

/// The values with every ring made straight: column i of all lanes shows the ring that crosses the path at column i.
[[nodiscard]] cv::Mat1f flatten(const cv::Mat1f& values, const cv::Mat1f& flow_mm, double px_mm);

} // namespace pithward::boundary
