#pragma once

#include <Eigen/Core>

#include <optional>

namespace pithward::dating {

/// The curve a exp(-b t) + k, t in years, with the least sum of squared distances, b between 0.1 / length and 1; NaN
/// where there is no value. Nothing if it has a <= 0 or k < 0, if the best b lies at an end of that range (it is a
/// line, or one single ring), or if there are fewer than five values.
///
/// For each b the others follow from a linear fit (variable projection, Golub and Pereyra 1973); b is sought on a grid
/// of logarithms, then by golden section. No start is needed, so the result doesn't depend on one.
[[nodiscard]] std::optional<Eigen::ArrayXd> falling_exponential(const Eigen::ArrayXd& values);

} // namespace pithward::dating
