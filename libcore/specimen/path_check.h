#pragma once

#include "libcore/specimen/calibration.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/scan.h"
#include "libcore/specimen/units.h"

#include <optional>
#include <vector>

namespace pithward {

/// Why nobody can measure along these points of a scan: off the scan, all within a pixel, more than `most_path_points`,
/// longer than `longest_path_mm`, or a path that runs back over itself, which would count rings twice. Nothing where
/// one can. The fault's `where` is the scan's file.
[[nodiscard]] std::optional<Fault> fault_of_path(const std::vector<ImagePoint>& points, const Scan& scan,
                                                 const Calibration& calibration);

inline constexpr std::size_t most_path_points = 10'000;
inline constexpr double longest_path_mm = 3000.0; ///< No increment core is as long.

} // namespace pithward
