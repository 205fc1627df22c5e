#pragma once

#include "libcore/specimen/work.h"
#include "libimaging/boundary/relief.h"
#include "libimaging/strip/lanes.h"

#include <opencv2/core.hpp>

#include <vector>

namespace pithward::boundary {

/// A strip with its rings made straight, ready to be searched. Rows are lanes, columns places on the path.
struct FlatStrip {
    cv::Mat1f tone;    ///< Flattened logarithm of brightness.
    cv::Mat1f level;   ///< Flattened relief (Relief::level).
    cv::Mat1f weight;  ///< 0 to 1: how surely the cell is wood of this core.
    cv::Mat1f flow_mm; ///< Ring flow (flow.h).
    double start_mm = 0.0;
    double px_mm = 0.02;
    double lane_mm = 0.1;
    double path_mm = 0.0; ///< Length of the path itself: s from 0 to path_mm.

    [[nodiscard]] int columns() const { return tone.cols; }
    [[nodiscard]] int lanes() const { return tone.rows; }
    [[nodiscard]] int centre() const { return tone.rows / 2; }
    [[nodiscard]] double s(double column) const { return start_mm + column * px_mm; }
    [[nodiscard]] double column(double s_mm) const { return (s_mm - start_mm) / px_mm; }
    [[nodiscard]] double u(double lane) const { return (lane - centre()) * lane_mm; }
};

/// Relief, flow and weights of a strip, in one.
[[nodiscard]] FlatStrip flat_strip(const Lanes& lanes, double path_mm, const Work& work = {});

/// Weighted mean across lanes `first` to `last` (inclusive) without outliers, one value a column: cells further than
/// three scaled median deviations from the column's median are left out. Columns without wood get the value of the
/// nearest that has.
[[nodiscard]] std::vector<float> profile(const FlatStrip& strip, const cv::Mat1f& values, int first, int last);

/// Share of the middle lanes that are wood, one value a column.
[[nodiscard]] std::vector<float> wood_share(const FlatStrip& strip);

} // namespace pithward::boundary
