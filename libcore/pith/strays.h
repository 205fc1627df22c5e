#pragma once

#include <Eigen/Core>

#include <span>
#include <vector>

namespace pithward::pith {

/// A traced boundary before it is smoothed: its points in order across the core, and where it crosses the path.
struct Trace {
    Eigen::Vector2d at = Eigen::Vector2d::Zero();
    std::vector<Eigen::Vector2d> points;
};

/// Cuts off the ends of traces that have gone astray: where one leaves the way of its neighbours, as at the core's
/// inner end, where a boundary runs out of the wood and its trace along the wood's edge.
///
/// From one centre for all traces (concentric circles, least squares) neighbours stray from their circles alike. A
/// point that is off from the median of the nearest traces there by more than 0.05 mm and what swells may do takes all
/// points beyond it along. Fewer than four traces are left as they are. Traces from the innermost outward.
void cut_strays(std::span<Trace> traces);

} // namespace pithward::pith
