#pragma once

#include "libimaging/calibrate/ruler_line.h"

#include <opencv2/core.hpp>

#include <vector>

namespace pithward::calibrate {

/// A stretch of a picture's row or column that may lie on a ruler's marks.
struct RulerWindow {
    RulerLine line;     ///< In pixels of the picture.
    double share = 0.0; ///< Of the power of its changes that lies at the step of a graduation and its overtones.
};

/// The stretches of 20 mm along rows and columns of a grey picture of this scale whose changes lie mostly at the step
/// of a graduation, within 6 %; the best first, no two of them close to each other, at most `most_windows`. A quick
/// look: each wants to be measured before it is believed.
[[nodiscard]] std::vector<RulerWindow> ruler_windows(const cv::Mat1f& grey, double px_per_mm_x, double px_per_mm_y);

inline constexpr std::size_t most_windows = 16;

} // namespace pithward::calibrate
