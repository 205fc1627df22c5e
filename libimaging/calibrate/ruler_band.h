#pragma once

#include "libcore/specimen/outcome.h"
#include "libimaging/calibrate/ruler_line.h"
#include "libimaging/scan/scan_file.h"

#include <opencv2/core.hpp>

#include <vector>

namespace pithward::calibrate {

/// Brightness beside a line, 0 to 1: column i lies i * step pixels from the line's start, row j (j - middle) * step
/// pixels beside it, positive to the right. Places outside the scan are not a number.
struct Band {
    cv::Mat1f grey;
    double step = 1.0; ///< Pixels of the scan, both ways.
    int middle = 0;    ///< The row on the line.

    [[nodiscard]] double across(int row) const { return (row - middle) * step; }
};

/// Samples the band of so many pixels on both sides of a line that `validate` accepted, from squares of `reduction`
/// pixels. Read block by block, so that a slanting line costs no more than a straight one.
[[nodiscard]] Outcome<Band> sample_band(const ScanFile& scan, const RulerLine& line, double half_breadth_px,
                                        int reduction = 1);

/// Mean of some rows of a band, column by column; row j is moved back by slant * across(j) pixels first, so that marks
/// which lean by `slant` stand on each other. Samples as those of the band; what lies outside the scan has no say.
[[nodiscard]] std::vector<double> mean_profile(const Band& band, cv::Range rows, double slant);

/// A value between samples, by cubic interpolation (Catmull and Rom 1974); at the ends that of the last sample.
[[nodiscard]] double value_at(const std::vector<double>& profile, double at);

} // namespace pithward::calibrate
