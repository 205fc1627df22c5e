#pragma once

#include "libcore/specimen/work.h"
#include "libimaging/calibrate/ruler_scale.h"

#include <optional>

namespace pithward {

/// Looks for a ruler that lies along x or y, tilted by up to some 4 degrees, on a scan whose scale is known to 6 %. In
/// steps:
///
/// 1. Stretches of an overview whose changes lie mostly at the step of a graduation (ruler_windows).
/// 2. Each is measured as a line drawn by hand would be (scale_along), then along the ruler as far as it goes.
/// 3. It is a ruler only when at least `least_found_marks` marks stand at equal steps within 4 % of a step, when the
///    pattern of their lengths tells the graduation, and when the scale is within a tenth of what was told.
///
/// Ring boundaries stand at no equal steps and have no such pattern. Nothing when no ruler is seen: that does not mean
/// that there is none. Fails where the scan can't be read.
[[nodiscard]] Outcome<std::optional<RulerScale>> find_ruler(const ScanFile& scan, const Calibration& told,
                                                            const Work& work = {});

inline constexpr int least_found_marks = 16;

} // namespace pithward
