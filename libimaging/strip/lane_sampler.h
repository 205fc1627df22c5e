#pragma once

#include "libcore/specimen/outcome.h"
#include "libimaging/scan/scan_file.h"
#include "libimaging/strip/kept_pieces.h"
#include "libimaging/strip/straighten.h"
#include "libimaging/strip/strip_geometry.h"

namespace pithward::strip {

/// Columns `from` to `to` (exclusive) of a strip averaged into lanes of `rows_per_lane` rows each, into the same
/// columns of `lanes`: red, green and blue, 0 to 1. The same as averaging the rows of straighten(), places outside the
/// scan being black, but without making the strip. What `kept` has is taken from there, and what it has not is given to
/// it.
[[nodiscard]] Outcome<void> sample_lanes(const ScanFile& scan, const StripGeometry& geometry, const StripGrid& grid,
                                         int rows_per_lane, int from, int to, LanePiece& lanes,
                                         KeptPieces* kept = nullptr);

} // namespace pithward::strip
