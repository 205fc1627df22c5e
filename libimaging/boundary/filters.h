#pragma once

#include <opencv2/core.hpp>

#include <algorithm>
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
[[nodiscard]] inline float sample(const float* row, int columns, double column) {
    const double inside = std::clamp(column, 0.0, columns - 1.0);
    const int left = std::min(static_cast<int>(inside), std::max(0, columns - 2));
    const int right = std::min(left + 1, columns - 1);
    const auto share = static_cast<float>(inside - left);
    return row[left] + share * (row[right] - row[left]);
}

/// The values with every ring made straight by its flow (flow.h): column i of all lanes shows the ring that crosses the
/// path at column i. `px_mm` is the step of the columns.
[[nodiscard]] cv::Mat1f flatten(const cv::Mat1f& values, const cv::Mat1f& flow_mm, double px_mm);

} // namespace pithward::boundary
