#pragma once

#include <opencv2/core.hpp>

namespace pithward::boundary {

/// One round of following the rings from the path outward, in mm: smoothing of the features along and across the path,
/// the window over which a lane is compared with those before it, and how much breadth these are remembered over.
struct FollowRound {
    double feature = 0.08;
    double across = 0.0;
    double window_s = 0.8;
    double memory = 0.6;
};

/// Follows every ring from the path outward, lane by lane, on a strip that is nearly straight: each lane is laid onto
/// the mean of the lanes before it by least squares on the values (Lucas and Kanade 1981). It keeps to single rings
/// where slopes taken over a window follow the strongest of them. Answers with the move (mm) that each cell still
/// wants; it must be under a fraction of a ring from one lane to the next. A quadratic through the moves around the
/// path is zero at the path. `px_mm` is the step of the columns.
[[nodiscard]] cv::Mat1f follow_rings(const cv::Mat1f& soft, const cv::Mat1f& solid, double px_mm, double lane_mm,
                                     const FollowRound& round);

} // namespace pithward::boundary
