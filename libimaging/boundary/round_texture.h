#pragma once

#include "libimaging/strip/lanes.h"

#include <opencv2/core.hpp>

#include <optional>

namespace pithward::boundary {

/// A place that a strip's texture is laid round, and how much better that explains it than straight rings do: the gain
/// in summed agreement over the cells (0.3 mm) before and after the place, within 10 mm of it.
struct RoundTexture {
    double s_mm = 0.0;
    double u_mm = 0.0;
    double before = 0.0;
    double after = 0.0;

    [[nodiscard]] double both() const { return before + after; }
};

/// Looks for the centre of the rings on a strip or a little beyond its ends. Rings run round the pith and rays run
/// toward it, so that gradients of either kind point along or square to the direction of the pith: cell by cell the
/// agreement is the cosine of four times the angle between them, times the coherence of the structure tensor. `tone`
/// is the logarithm of brightness on the lanes' grid. Nothing on a strip too short to tell.
[[nodiscard]] std::optional<RoundTexture> round_texture(const cv::Mat1f& tone, const Lanes& lanes);

} // namespace pithward::boundary
