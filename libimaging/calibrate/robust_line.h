#pragma once

#include <optional>
#include <vector>

namespace pithward::calibrate {

/// A point of a line fit: y at x.
struct LinePoint {
    double x = 0.0;
    double y = 0.0;
};

/// A straight line through points, some of which may be plainly wrong.
struct RobustLine {
    double offset = 0.0; ///< At x = 0.
    double slope = 0.0;
    double slope_sd = 0.0;
    double scatter = 0.0;   ///< Standard deviation of a good point about the line.
    double agreement = 0.0; ///< Correlation of each good point's residual with the next one's, 0 to 0.9.
    int good = 0;           ///< Points with a weight of at least a half.

    [[nodiscard]] double at(double x) const { return offset + slope * x; }
};

/// Least squares with Tukey's biweight (c = 4.685) about the line y = first_offset + first_slope * x, scatter from
/// the median and the upper quartile of the residuals' sizes, at least `least_scatter`. The slope's deviation is
/// Huber's for M-estimates (Huber 1981, section 7.6; from memory), times sqrt((1 + r) / (1 - r)) where neighbouring
/// residuals agree with correlation r, as they do when the scan itself stretches and shrinks. Points must be in the
/// order of x. Nothing with fewer than four good points.
[[nodiscard]] std::optional<RobustLine> fit_line(const std::vector<LinePoint>& points, double first_offset,
                                                 double first_slope, double least_scatter);

} // namespace pithward::calibrate
