#pragma once

#include "libcore/specimen/calibration.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/units.h"
#include "libcore/specimen/work.h"
#include "libimaging/scan/scan_file.h"

#include <opencv2/core.hpp>

#include <vector>

namespace pithward {

/// A core on a scan, without a direction yet.
struct CoreOutline {
    std::vector<ImagePoint> path; ///< Along the core's middle, from left to right or from top to bottom.
    double width_mm = 0.0;        ///< Breadth of the sanded surface.
};

/// Finds the cores of a scan: long stretches whose texture runs across them. Tilted by a few degrees and slightly bowed
/// ones too, lying along or across the scan; mounts (their grain runs along), rulers (evenly spaced lines), labels
/// and codes are left out. Sorted from top to bottom, then from left to right. An empty answer means that no core was
/// seen.
[[nodiscard]] Outcome<std::vector<CoreOutline>> outline_cores(const ScanFile& scan, const Calibration& calibration,
                                                              const Work& work = {});

/// The same on an 8-bit RGB picture of `px_per_mm` pixels to the millimetre; places in its pixels.
[[nodiscard]] std::vector<CoreOutline> outline_cores(const cv::Mat& picture, double px_per_mm);

} // namespace pithward
