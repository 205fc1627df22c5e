#pragma once

#include "libcore/measure/age.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <optional>
#include <ostream>
#include <span>
#include <string>

namespace pithward {

/// What a project says of a reading beside what was measured.
struct ProjectNote {
    std::string site;
    std::string tree;
    std::string marked_by;
    std::string passed_by;
    bool own_work = false; ///< Who passed it marked or changed it too.
    int looked_at = 0;     ///< Of the boundaries ...
    int in_bulk = 0;       ///< ... and these; nobody has confirmed the rest.
};

/// A reading and what `measure` made of it.
struct MeasuredReading {
    Reading reading;
    RingSeries series;
    std::optional<ProjectNote> note = {};
    std::optional<HeightAllowance> allowance = {}; ///< For growing up to the height of the core.
};

/// Writes `pithward measure --json` (design, section 5): {"readings": [...]}, with every key there, null where unknown.
/// A reading with several legs has `legs` in place of the points of `path`, which is null then, and its boundaries,
/// breaks, findings and candidates carry `leg`, an index into them. A leg's `joined_by` is null, or
/// {"kind": "boundary", "on_previous": i, "on_this": k} or {"kind": "break", "break": i} with indices into `boundaries`
/// and `breaks`. `pith` lists what published methods say as `other_methods`, each with `method`, `distance_mm`,
/// `distance_low_mm`, `distance_high_mm` (null where nothing bounds it) and `missing_rings`; `how` tells how its place
/// is known
/// ("curves", "seen", "hand"). Each ring has `basal_area_mm2`, `basal_area_low_mm2` and `basal_area_high_mm2`
/// (measure/basal_area.h). `age` (measure/age.h) is null where the pith's year is not known, else {"pith_year",
/// "pith_year_low", "pith_year_high", "years_to_height", "years_to_height_sd", "establishment_year",
/// "establishment_year_low", "establishment_year_high"}, the last five null without an allowance. Positions are rounded
/// to 0.001 px, lengths to 0.0001 mm. Fails where a place is on no leg.
///
/// A reading out of a project has `site`, `tree`, `analyst`, `state` and `review` too: {"marked_by", "passed_by" (null
/// where nobody did), "own_work", "boundaries", "looked_at", "in_bulk"}; its findings have `state`, `comment` and
/// `verdict`, its boundaries `confirmed`. `headers`, where there are any, stand in a list of this name.
[[nodiscard]] Outcome<void> write_readings_json(std::ostream& out, std::span<const MeasuredReading> readings,
                                                std::span<const std::string> headers = {});

} // namespace pithward
