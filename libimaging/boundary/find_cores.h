#pragma once

#include "libcore/specimen/calibration.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/work.h"
#include "libimaging/boundary/propose_reading.h"
#include "libimaging/boundary/wood/judge_wood.h"
#include "libimaging/scan/scan_file.h"

#include <optional>
#include <string>
#include <vector>

namespace pithward {

/// A core found on a scan, or one of the two sides of a core that goes past the pith, with the path proposed for it.
struct FoundCore {
    std::vector<ImagePoint> path; ///< Along the core's middle, from the end judged to be bark.
    BarkEnd bark_end;
    double width_mm = 0.0;                       ///< Breadth of the sanded surface.
    std::optional<boundary::WoodJudgement> wood; ///< Nothing where it was not judged.
    std::optional<PithOnCore> pith;              ///< Where the pith was seen on the core, if it was.
};

/// Finds the cores of a scan (strip/core_finder.h) and judges which end of each is bark: by the side on which the
/// changes of tone are sharp, and by the curve of the rings, which bend round the pith. A core with its pith on it
/// (boundary/pith_crossing.h) ends there; one that goes on past it for some millimetres gives two, each from its own
/// outer end to the pith. Sorted from top to bottom, then from left to right. An empty answer means that no core was
/// seen.
[[nodiscard]] Outcome<std::vector<FoundCore>> find_cores(const ScanFile& scan, const Calibration& calibration,
                                                         const Work& work = {});

/// What is asked for to read a core that was found, with all that is known of it from finding it.
[[nodiscard]] ReadingRequest request_for(const FoundCore& core, const std::string& scan_name,
                                         const Calibration& calibration);

} // namespace pithward
