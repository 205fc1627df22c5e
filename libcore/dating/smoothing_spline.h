#pragma once

#include <Eigen/Core>

namespace pithward::dating {

/// The cubic smoothing spline through values by year, with a response of one half to a sine of `period` years (Cook and
/// Peters 1981, Tree-Ring Bulletin 41): it minimises the sum of squared distances plus `stiffness` times the integral
/// of the squared second derivative.
///
/// 1. Far from the ends a sine of frequency f keeps the share `spline_response` of its amplitude.
/// 2. A straight line is kept as it is.
/// 3. Years without a value (NaN) have no curve; the spline is that of the others at their true distances.
/// 4. One or two values are their own curve.
///
/// Requires a period of more than 2 years. O(n).
[[nodiscard]] Eigen::ArrayXd smoothing_spline(const Eigen::ArrayXd& values, double period);

/// The weight of the second derivative for a response of one half at this period: (2 + c) / (12 (1 - c)^2), with
/// c = cos(2 pi / period).
[[nodiscard]] double spline_stiffness(double period);

/// The share of a sine's amplitude that the spline keeps: 1 / (1 + 12 stiffness (1 - c)^2 / (2 + c)), c = cos(2 pi f).
/// From the transforms of the spline's two matrices, 4 (1 - c)^2 and (2 + c) / 3.
[[nodiscard]] double spline_response(double stiffness, double frequency);

} // namespace pithward::dating
