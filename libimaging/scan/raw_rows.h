#pragma once

#include "libcore/specimen/scan.h"
#include "libimaging/scan/vips_image.h"

#include <cstdint>

namespace pithward::scan {

/// Pixels that lie in a file as they are, RGB of 8 bit, row after row from the byte `at`. They are read and never
/// mapped: a mapped file that gets shorter while it is open ends the program, one that is read gives damage. Null where
/// the file can't be opened.
[[nodiscard]] VipsHandle raw_rows(const Scan& header, std::uint64_t at);

} // namespace pithward::scan
