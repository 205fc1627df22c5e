#pragma once

#include "libimaging/boundary/flow_follow.h"
#include "libimaging/strip/lanes.h"

#include <opencv2/core.hpp>

#include <vector>

namespace pithward::boundary {

/// One round of the search for the rings' slope, in mm: smoothing of the features along and across the path, and the
/// window over which a slope is taken as one.
struct FlowRound {
    double feature = 0.1;
    double across = 0.0;
    double window_s = 1.0;
    double window_u = 0.3;
    double from_afar = 0.0; ///< Weight of a longer window, for places where little is seen.
};

/// What the slopes are sought from.
enum class FlowFeature {
    Edges,     ///< Changes of the values, as they are.
    DarkLines, ///< Thin lines darker than both sides; the fainter ones are left out.
};

/// How the slopes are sought: rounds from broad to fine.
struct FlowPlan {
    std::vector<FlowRound> rounds;
    std::vector<FollowRound> follow = {}; ///< Then every ring is followed by itself.
    FlowFeature feature = FlowFeature::Edges;
    double step_mm = 0.04;  ///< Columns are averaged to this step.
    bool past_rays = false; ///< Changes that run along the path (rays, vessels in a row) weigh little.
    double sureness = 0.05; ///< Share of the usual gradient energy under which a slope is taken as unchanged.
};

/// How the rings run across the strip: for each lane and each place on the path, how far along the path (mm) the ring
/// that crosses the path there has moved by the time it reaches the lane. Zero in the centre lane.
///
/// The slope is sought by least squares from the gradients of neighbouring lanes, first of the broad features, then of
/// ever finer ones, each time on the strip flattened by what is known so far (plane-wave slopes, as used for layered
/// images in seismology). `solid` is 1 where there is wood.
[[nodiscard]] cv::Mat1f ring_flow(const cv::Mat1f& values, const cv::Mat1f& solid, const Lanes& lanes,
                                  const FlowPlan& plan);

} // namespace pithward::boundary
