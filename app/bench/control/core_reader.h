#pragma once

#include "app/bench/model/opened_scan.h"
#include "app/picture/measured_core.h"
#include "libcore/pith/judge_pith.h"

#include <vector>

namespace pithward::bench {

/// The work of reading cores, for a thread beside the window. Pure but for the scan that is read.

/// What was read from one scan, and what could not be.
struct ReadCores {
    std::vector<picture::MeasuredCore> cores;
    std::vector<Fault> faults;
    bool damaged = false; ///< The file itself is damaged.
};

/// Finds every core of a scan and reads each along its proposed path.
[[nodiscard]] ReadCores read_cores(const OpenedScan& scan, const Calibration& calibration, const Work& work);

/// Reads one path and judges its pith. `breadth_mm` as in `measured`. `only_core`: the scan has no other core, so the
/// whole row of the field sheet is about it, and what that tells of the core comes in as findings.
[[nodiscard]] Outcome<picture::MeasuredCore> read_path(const OpenedScan& scan, const ReadingRequest& request,
                                                       double breadth_mm, bool only_core, const Work& work);

/// What the field sheet knows of a core's pith.
[[nodiscard]] PithKnowledge knowledge_of(const OpenedScan& scan);

/// The kind of wood and the outer wood of a reading, as far as somebody has said them: what the program judged by
/// itself stands with an open finding.
[[nodiscard]] std::optional<WoodType> said_wood(const Reading& reading);
[[nodiscard]] OuterWood said_outer(const Reading& reading);

/// What was asked for when a reading was made, so that it can be asked again with one thing changed.
[[nodiscard]] ReadingRequest request_of(const Reading& reading, const Calibration& calibration);

} // namespace pithward::bench
