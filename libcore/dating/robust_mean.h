#pragma once

#include <Eigen/Core>

namespace pithward::dating {

/// The biweight mean of what is there (Mosteller and Tukey 1977, Data Analysis and Regression): the mean with weights
/// (1 - u^2)^2, u = (x - mean) / (9 S), S the median distance from the median; 0 for |u| >= 1. Begins at the median and
/// goes on until it stands still. Under three values the arithmetic mean, with S = 0 the median; NaN of nothing.
[[nodiscard]] double biweight_mean(const Eigen::ArrayXd& values);

/// The weights with which it ended, 0 for what isn't there. Those of a plain mean are 1.
[[nodiscard]] Eigen::ArrayXd biweight_weights(const Eigen::ArrayXd& values);

/// The median of what is there; NaN of nothing.
[[nodiscard]] double median(const Eigen::ArrayXd& values);

} // namespace pithward::dating
