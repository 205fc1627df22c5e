#pragma once

#include "app/batch/command.h"
#include "app/batch/measure_options.h"
#include "libcore/formats/reading_json.h"
#include "libcore/specimen/outcome.h"

#include <span>
#include <string>
#include <vector>

namespace pithward::batch {

/// What was read from one scan.
struct MeasuredScan {
    std::string file;
    std::vector<MeasuredReading> readings;
};

/// Fails when an output asked for can't be written (output_files.h): told before the work, not after it.
[[nodiscard]] Outcome<void> check_outputs(const MeasureOptions& options, const CommonOptions& common);

/// Writes the files asked for, all or none as far as that can be known, and a table on standard output when none was
/// asked for.
[[nodiscard]] Outcome<void> write_outputs(const MeasureOptions& options, const CommonOptions& common,
                                          std::span<const MeasuredScan> scans);

} // namespace pithward::batch
