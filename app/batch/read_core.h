#pragma once

#include "app/batch/measure_options.h"
#include "app/batch/scan_scale.h"
#include "libcore/formats/reading_json.h"
#include "libcore/pith/judge_pith.h"
#include "libimaging/boundary/find_cores.h"
#include "libimaging/scan/scan_file.h"

#include <vector>

namespace pithward::batch {

/// The paths to read on a scan: the one given, or that of every core found.
[[nodiscard]] Outcome<std::vector<FoundCore>> paths_on(const ScanFile& scan, const Calibration& calibration,
                                                       const MeasureTask& task);

/// Reads one core along its path, measures it and judges its pith.
[[nodiscard]] Outcome<MeasuredReading> read_core(const ScanFile& scan, const ScanScale& scale, const MeasureTask& task,
                                                 const FoundCore& core, const PithKnowledge& knowledge = {},
                                                 const Work& work = {});

} // namespace pithward::batch
