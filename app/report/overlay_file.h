#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"
#include "libcore/specimen/work.h"
#include "libimaging/scan/scan_file.h"

#include <span>
#include <string>

namespace pithward::report {

/// A scan with its paths and boundaries as the bytes of a PNG. Needs no display and no application. The legs of the
/// readings name the scan by `scan_name`. Faults name the scan's file.
[[nodiscard]] Outcome<std::string> overlay_bytes(const ScanFile& scan, const std::string& scan_name,
                                                 std::span<const Reading> readings, std::span<const RingSeries> series,
                                                 const Work& work = {});

} // namespace pithward::report
