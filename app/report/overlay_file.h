#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"
#include "libcore/specimen/work.h"
#include "libimaging/scan/scan_file.h"

#include <filesystem>
#include <span>

namespace pithward::report {

/// Writes a scan with its paths and boundaries as a PNG, whole or not at all. Needs no display and no application. The
/// legs of the readings name the scan by `scan_name`. Faults name the file.
[[nodiscard]] Outcome<void> write_overlay(const std::filesystem::path& file, bool force, const ScanFile& scan,
                                          const std::string& scan_name, std::span<const Reading> readings,
                                          std::span<const RingSeries> series, const Work& work = {});

} // namespace pithward::report
