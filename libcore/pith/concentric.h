#pragma once

#include <Eigen/Core>

#include <optional>
#include <span>
#include <vector>

namespace pithward::pith {

/// Centre of concentric circles through several curves at once: the place from which the points of each lie most
/// nearly equally far (least squares, by Levenberg and Marquardt's damped steps). It computes what a transparent sheet
/// of concentric circles does by eye (Applequist 1958, Journal of Forestry 56:141). Starts from `start`; nothing where
/// it does not settle within 1 m. No curve is empty.
[[nodiscard]] std::optional<Eigen::Vector2d> concentric_centre(std::span<const std::vector<Eigen::Vector2d>> curves,
                                                               const Eigen::Vector2d& start);

} // namespace pithward::pith
