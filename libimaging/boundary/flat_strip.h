#pragma once

#include "libcore/specimen/work.h"
#include "libimaging/boundary/flow.h"
#include "libimaging/boundary/relief.h"
#include "libimaging/strip/lanes.h"

#include <opencv2/core.hpp>

#include <vector>

namespace pithward::boundary {

/// A strip with its rings made straight, ready to be searched. Rows are lanes, columns places on the path.
struct FlatStrip {
    cv::Mat1f tone;    ///< Flattened logarithm of brightness.
    cv::Mat1f signal;  ///< Flattened values in which the wood's boundaries fall steeply toward the pith.
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

/// What a kind of wood is traced by.
struct Signal {
    cv::Mat1f traced; ///< What the flow of the rings is sought in, one value a cell of the lanes.
    cv::Mat1f read;   ///< What is searched for boundaries: it falls steeply toward the pith at each of them.
    FlowPlan plan;
    double alike_across_mm = 0.0; ///< Smoothing before lanes are compared ...
    double alike_along_mm = 0.05; ///< ... across and along the path.
    float strange = 0.30F;        ///< Correlation at which a lane is not this core's wood ...
    float familiar = 0.60F;       ///< ... and at which it surely is.
};

/// Flow and weights of a strip, in one.
[[nodiscard]] FlatStrip flat_strip(const Lanes& lanes, const Relief& relief, const Signal& signal, double path_mm,
                                   const Work& work = {});

/// Weighted mean across lanes `first` to `last` (inclusive) without outliers, one value a column: cells further than
/// three scaled median deviations from the column's median are left out. Columns without wood get the value of the
/// nearest that has.
[[nodiscard]] std::vector<float> profile(const FlatStrip& strip, const cv::Mat1f& values, int first, int last);

/// What profiles have in common. Cells of less weight are no wood of this core, ...
inline constexpr float least_wood = 0.3F;
/// ... columns with fewer cells of wood have no value, ...
inline constexpr std::size_t least_cells = 3;
/// ... lanes count the less the further they are from the path: the weights of lanes `first` to `last`, ...
[[nodiscard]] std::vector<float> lane_nearness(const FlatStrip& strip, int first, int last);
/// ... and columns without a value (not a number) repeat the last one before them, else the first after them.
void carry_over_gaps(std::vector<float>& values);

/// Share of the middle lanes that are wood, one value a column.
[[nodiscard]] std::vector<float> wood_share(const FlatStrip& strip);

} // namespace pithward::boundary
