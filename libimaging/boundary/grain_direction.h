#pragma once

#include <opencv2/core.hpp>

namespace pithward::boundary {

/// Which way the gradients of a strip's tone point, cell by cell: the structure tensor's coherence (0 to 1, less where
/// little is seen) times the cosine and the sine of twice their angle to the path. 1 and 0: lines run square across it.
struct GrainDirection {
    cv::Mat1f cosine;
    cv::Mat1f sine;
};

/// At one scale: gradients of the tone smoothed by `scale_mm`, averaged over 0.3 mm. The tone's slower changes are
/// taken off before (`without_light`).
[[nodiscard]] GrainDirection grain_direction(const cv::Mat1f& tone, double px_mm, double lane_mm, double scale_mm);

/// The tone less what changes over more than 1.5 mm along the path: light and stain.
[[nodiscard]] cv::Mat1f without_light(const cv::Mat1f& tone, double px_mm);

} // namespace pithward::boundary
