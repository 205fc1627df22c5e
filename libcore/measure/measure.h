#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

namespace pithward {

/// Widths, years and places along the path of a reading's rings (design, section 4). Pure: the same reading gives the
/// same series. Fails on a reading whose scans lack a calibration or whose legs have fewer than two points.
[[nodiscard]] Outcome<RingSeries> measure(const Reading& reading);

/// Distance along the whole path from its first point to the foot of a place, breaks included; legs before `leg` are
/// counted up to where they are left.
[[nodiscard]] Outcome<Millimetres> place_on_path(const Reading& reading, std::size_t leg, ImagePoint at);

} // namespace pithward
