#pragma once

#include "libcore/specimen/units.h"

#include <opencv2/core.hpp>

#include <vector>

namespace pithward::strip {

/// Where the texture of a picture runs across its rows (that is, from top to bottom), as the rings of a core do that
/// lies along them; a mount's grain runs along.
struct TextureMap {
    cv::Mat1b across; ///< 255 where the texture runs across the rows.
    cv::Mat1f change; ///< Squared gradient along the rows, not averaged.
    cv::Mat1f grey;   ///< Brightness, 0 to 255.
};

/// From the gradients' energy along and across the rows (the structure tensor's diagonal), averaged over the size of a
/// few rings. `picture` is 8-bit RGB.
[[nodiscard]] TextureMap texture_across_rows(const cv::Mat& picture, double px_per_mm);

/// True when something along the path, within `half_width` pixels of it, repeats itself every millimetre, as
/// graduations do and rings don't.
[[nodiscard]] bool is_ruler(const cv::Mat1f& grey, const std::vector<ImagePoint>& path, double half_width,
                            double px_per_mm);

} // namespace pithward::strip
