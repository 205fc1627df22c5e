#pragma once

#include "libcore/specimen/calibration.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/work.h"
#include "libimaging/scan/scan_file.h"

#include <vector>

namespace pithward {

/// A core found on a scan, with the path proposed for it.
struct FoundCore {
    std::vector<ImagePoint> path; ///< Along the core's middle, from the end judged to be bark.
    BarkEnd bark_end;
    double width_mm = 0.0; ///< Breadth of the sanded surface.
};

/// Finds the cores of a scan: long stretches of wood whose texture runs across them. Tilted by a few degrees and
/// slightly bowed ones too, along or across the scan; mounts, rulers and labels are left out. Sorted from top to bottom
/// (then left to right). An empty answer means that no core was seen.
[[nodiscard]] Outcome<std::vector<FoundCore>> find_cores(const ScanFile& scan, const Calibration& calibration,
                                                         const Work& work = {});

} // namespace pithward
