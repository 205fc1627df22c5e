#pragma once

#include "libimaging/strip/lanes.h"

#include <opencv2/core.hpp>

#include <array>

namespace pithward::boundary {

/// Lanes made comparable along the whole core.
struct Relief {
    cv::Mat1f tone;             ///< Natural logarithm of the chosen brightness: differences are relative darkness.
    cv::Mat1f level;            ///< Tone without light and stain gradients, in units of the local contrast, cut at +-3.
    cv::Mat1f solid;            ///< 1 where there is wood, 0 in cracks, gaps and shadows beside the core.
    std::array<float, 3> mix{}; ///< Share of red, green and blue in the brightness; they sum to 1.
};

/// Natural logarithm of a brightness of 0 to 1, finite for black.
[[nodiscard]] cv::Mat1f tone_of(const cv::Mat1f& brightness);

/// Chooses the mix of channels in which neighbouring lanes agree best against their noise (a ratio of quadratic forms,
/// sought on a grid of shares), then takes gradients away and evens out the contrast.
[[nodiscard]] Relief relief_of(const Lanes& lanes);

} // namespace pithward::boundary
