#pragma once

#include "libcore/specimen/outcome.h"
#include "libimaging/scan/scan_file.h"
#include "libimaging/strip/strip_geometry.h"

#include <opencv2/core.hpp>

namespace pithward {

/// The sampling of a strip: square pixels, column i at s = start_mm + i * px_mm, row j at u = (j - (rows - 1) / 2) *
/// px_mm.
struct StripGrid {
    double start_mm = 0.0;
    double px_mm = 0.02; ///< Size of a strip pixel.
    int columns = 0;
    int rows = 1;

    [[nodiscard]] double s(double column) const { return start_mm + column * px_mm; }
    [[nodiscard]] double u(double row) const { return (row - 0.5 * (rows - 1)) * px_mm; }
};

/// Columns `from` to `to` (exclusive) of a strip, straightened at full resolution with linear interpolation; RGB, 8 or
/// 16 bit as the scan. Places outside the scan are black. At most `greatest_block` columns at a time: callers go block
/// by block, so the length of a strip has no limit.
[[nodiscard]] Outcome<cv::Mat> straighten(const ScanFile& scan, const StripGeometry& geometry, const StripGrid& grid,
                                          int from, int to);

inline constexpr int greatest_block = 8192;

} // namespace pithward
