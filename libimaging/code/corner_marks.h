#pragma once

#include "libcore/specimen/units.h"

#include <opencv2/core.hpp>

#include <vector>

namespace pithward::label {

/// One of the three squares in a code's corners (the finder patterns of ISO/IEC 18004): a dark square in a light one in
/// a dark one, which any line through its middle meets as 1:1:3:1:1.
struct CornerMark {
    ImagePoint at;       ///< Its middle, in pixels of the picture.
    double module = 0.0; ///< Edge of one of the code's squares, in pixels.
};

/// Dark (255) and light (0) of a grey picture, by the mean of what is around each pixel.
[[nodiscard]] cv::Mat dark_pixels(const cv::Mat& grey);

/// What looks like a corner of a code in a picture of dark (255) and light (0), turned however; at most 1000.
[[nodiscard]] std::vector<CornerMark> corner_marks(const cv::Mat& dark);

/// How many places of all rows look like the middle of a corner, along the row alone. It bounds what a reader of codes
/// has to look at.
[[nodiscard]] int corner_like_runs(const cv::Mat& dark);

/// A square that three corner marks span, and may be a code.
struct CodeSquare {
    cv::Rect2d box; ///< Around it with its rim, in pixels of the picture; it may reach over the edge.
    double module = 0.0;
};

/// The squares that three of the marks span, each two of whose sides are alike and square to each other; at most 600.
[[nodiscard]] std::vector<CodeSquare> code_squares(const std::vector<CornerMark>& marks);

} // namespace pithward::label
