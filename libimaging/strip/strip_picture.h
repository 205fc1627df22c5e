#pragma once

#include "libcore/specimen/calibration.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/units.h"
#include "libcore/specimen/work.h"
#include "libimaging/scan/scan_file.h"

#include <opencv2/core/mat.hpp>

#include <vector>

namespace pithward {

/// Which strip is wanted to look at.
struct StripRequest {
    std::vector<ImagePoint> path; ///< A leg; at least two different points.
    Calibration calibration;
    double half_breadth_mm = 2.5; ///< To either side of the path; above 0, at most 20.
    int most_columns = 16384;     ///< A longer strip is shown coarser.
};

/// A leg straightened to be looked at: column i begins at i * px_mm from the first point, and the last one ends with
/// the path.
struct StripPicture {
    cv::Mat rgb;              ///< As the scan, 8 or 16 bit; the middle row lies on the path.
    std::vector<float> light; ///< Light profile: mean brightness of the middle third of each column, 0 to 1, by the
                              ///< luma weights of ITU-R BT.601 (from memory).
    double px_mm = 0.02;
};

/// Fails on a path or a scan that can't be read, on a request out of its ranges, and when it is stopped.
[[nodiscard]] Outcome<StripPicture> strip_picture(const ScanFile& scan, const StripRequest& request,
                                                  const Work& work = {});

} // namespace pithward
