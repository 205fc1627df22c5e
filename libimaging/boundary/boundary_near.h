#pragma once

#include "libcore/specimen/boundary.h"
#include "libcore/specimen/calibration.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/wood.h"
#include "libcore/specimen/work.h"
#include "libimaging/scan/scan_file.h"

#include <optional>
#include <vector>

namespace pithward {

/// Where a person has pointed.
struct NearRequest {
    std::vector<ImagePoint> path; ///< The leg, from bark to pith; at least two different points.
    Calibration calibration;
    WoodType wood = WoodType::Conifer;
    ImagePoint at;           ///< Its foot on the leg is what counts.
    double reach_mm = 0.25;  ///< How far along the path from there to look; above 0, at most 2.
    double breadth_mm = 0.0; ///< Breadth of the core's surface where it is known; 0: unknown.
};

/// The boundary that the wood shows near a place, by the same evidence as `propose_reading`, looked at in a few
/// millimetres of the path only. The likeliest within reach, where being near counts as evidence too. Its confidence is
/// from its own signs, not from its neighbours. Nothing where the wood shows none. Fails as `propose_reading` does on a
/// path or a scan that can't be read.
[[nodiscard]] Outcome<std::optional<Candidate>> boundary_near(const ScanFile& scan, const NearRequest& request,
                                                              const Work& work = {});

} // namespace pithward
