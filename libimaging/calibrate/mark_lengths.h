#pragma once

#include "libimaging/calibrate/ruler_band.h"

#include <optional>
#include <vector>

namespace pithward::calibrate {

/// Where the marks stand on a band: those of number k lie along (first + k * period) + slant * across, all in pixels of
/// the scan.
struct MarkRows {
    double first = 0.0; ///< Of the middle of mark 0's stroke on the line, from the line's start.
    double period = 0.0;
    int count = 0;
    double slant = 0.0;
    double breadth = 0.0; ///< Of a stroke.
    bool dark = true;
};

/// How much darker (or paler) than its surroundings each mark is, row by row of the band; 1 is the usual mark on the
/// line. `moved` by half a period gives what stands between the marks. Not a number outside the scan.
[[nodiscard]] cv::Mat1f strengths(const Band& band, const MarkRows& marks, double moved = 0.0);

/// How far each mark runs across the line without a gap, in periods; not a number where it is missing on the line.
[[nodiscard]] std::vector<double> mark_lengths(const Band& band, const cv::Mat1f& strength, const MarkRows& marks);

/// The distance beside the line, in pixels, at which further marks stand half way between the marks, so that the
/// ruler is graduated twice as finely as the line shows; nothing if there are none.
[[nodiscard]] std::optional<double> finer_marks_beside(const Band& band, const MarkRows& marks);

} // namespace pithward::calibrate
