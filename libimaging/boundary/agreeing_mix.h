#pragma once

#include <opencv2/core.hpp>

#include <array>

namespace pithward::boundary {

/// The mix of three channels (weights of any sign) in which lanes some tenths of a millimetre apart agree best, against
/// all that varies: what crosses the core stands out, and what is strewn over it (vessels, rays) goes as far as its
/// colour differs. The largest root of the covariance between such lanes against that within them. `flat` are the
/// channels of the same lanes, flattened, without what is broader than a ring's line; `lane_mm` is their step.
[[nodiscard]] std::array<double, 3> agreeing_mix(const std::array<cv::Mat1f, 3>& flat, double lane_mm);

} // namespace pithward::boundary
