#pragma once

#include "app/batch/command.h"
#include "app/batch/measure_options.h"

namespace pithward::batch {

/// Whether `pithward measure` was told of a project in place of scans.
[[nodiscard]] bool names_project(const MeasureOptions& options);

/// Reads every core of a project that has no reading yet, or those named after it, and keeps the readings in it, each
/// in a transaction of its own: what was done stays when the rest is stopped. Core by core, what can't be read is told.
[[nodiscard]] Exit measure_project(const MeasureOptions& options, const CommonOptions& common);

} // namespace pithward::batch
