#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"
#include "libimaging/scan/scan_file.h"

#include <string>

namespace pithward::report {

/// The wood along one leg of a reading as the scan shows it, with path, boundaries, breaks and findings, laid level,
/// as the bytes of a JPEG. A long leg stands in rows below each other, in the order of the path where it runs from left
/// to right and against it else. Needs no display and no application. Fails where the scan can't be read.
[[nodiscard]] Outcome<std::string> core_picture(const ScanFile& scan, const Reading& reading, const RingSeries& series,
                                                std::size_t leg);

} // namespace pithward::report
