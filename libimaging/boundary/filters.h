#pragma once

#include <opencv2/core.hpp>

#include <vector>

namespace pithward::boundary {

/// Gaussian smoothing with standard deviations in cells along rows (`lane`) and columns (`s`); edges are replicated.
/// Wide ones are made of running means, so the time does not grow with their breadth.
[[nodiscard]] cv::Mat1f smooth(const cv::Mat1f& values, double sigma_lane, double sigma_s);

/// The same for one line of values.
[[nodiscard]] std::vector<float> smooth(const std::vector<float>& values, double sigma);

/// Smoothing that leaves out cells of weight 0: sum of weighted values over sum of weights.
[[nodiscard]] cv::Mat1f masked_smooth(const cv::Mat1f& values, const cv::Mat1f& weights, double sigma_lane,
                                      double sigma_s);

/// Means over `step` columns; a rest at the end is dropped.
[[nodiscard]] cv::Mat1f shorten(const cv::Mat1f& values, int step);

/// The opposite of `shorten`: linear interpolation to `columns`, cell centres kept in place.
[[nodiscard]] cv::Mat1f lengthen(const cv::Mat1f& values, int step, int columns);

/// Value at a fractional column of a row, linear; ends are replicated.
[[nodiscard]] float sample(const float* row, int columns, double column);

} // namespace pithward::boundary
