#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <ostream>
#include <span>

namespace pithward {

/// A reading and what `measure` made of it.
struct MeasuredReading {
    Reading reading;
    RingSeries series;
};

/// Writes `pithward measure --json` (design, section 5): {"readings": [...]}, with every key there, null where unknown.
/// A reading with several legs has `legs` in place of the points of `path`, which is null then, and its boundaries,
/// breaks, findings and candidates carry `leg`, an index into them. A leg's `joined_by` is null, or
/// {"kind": "boundary", "on_previous": i, "on_this": k} or {"kind": "break", "break": i} with indices into `boundaries`
/// and `breaks`. `pith` lists what published methods say as `other_methods`, each with `method`, `distance_mm`,
/// `distance_low_mm`, `distance_high_mm` (null where nothing bounds it) and `missing_rings`. Positions are rounded to
/// 0.001 px, lengths to 0.0001 mm. Fails where a place is on no leg.
[[nodiscard]] Outcome<void> write_readings_json(std::ostream& out, std::span<const MeasuredReading> readings);

} // namespace pithward
