#pragma once

#include "libcore/specimen/reading.h"

#include <Eigen/Core>

#include <vector>

namespace pithward::pith {

/// A traced ring boundary on the wood, in the frame of the core's inner end.
struct Arc {
    BoundaryId id;
    double ring = 0.0; ///< Boundaries between this one and the innermost; 0 for the innermost.
    Eigen::Vector2d at = Eigen::Vector2d::Zero(); ///< Where it crosses the path.
    std::vector<Eigen::Vector2d> points;          ///< In order across the core, outliers left out.
    std::vector<double> variance;                 ///< Of each point's place along the path, mm^2.
};

/// The frame of a core's inner end, in mm on the wood: the origin where the innermost boundary crosses the path, x
/// along the path toward the pith, y to the right of the walker.
class InnerFrame {
public:
    InnerFrame(ImagePoint origin, Eigen::Vector2d inward, const Calibration& calibration);
    [[nodiscard]] Eigen::Vector2d on_wood(ImagePoint at) const;
    [[nodiscard]] ImagePoint on_scan(const Eigen::Vector2d& at) const;

private:
    Eigen::Vector2d scale_; ///< Pixels for each mm, in x and y of the scan.
    Eigen::Vector2d origin_;
    Eigen::Vector2d inward_;
};

/// The innermost boundaries' curves, from the innermost outward, with the frame that they lie in.
struct InnerArcs {
    InnerFrame frame;
    std::vector<Arc> arcs = {};
    double half_breadth_mm = 0.0; ///< How far the wood is seen beside the path.
    double path_end_mm = 0.0;     ///< x of the path's inner end.
};

/// Gathers up to `most_arcs` arcs within `reach_mm` of the innermost boundary, closer to each other near it. Only
/// boundaries of the path's last leg count, and none beyond lost wood; the lengths of cracks are taken off. A curve
/// that says too little (few points, narrow) is left out, so the list may be empty. The reading has a leg with a
/// calibration and at least one boundary on it.
[[nodiscard]] InnerArcs inner_arcs(const Reading& reading);

inline constexpr std::size_t most_arcs = 10;
inline constexpr double reach_mm = 25.0;

} // namespace pithward::pith
