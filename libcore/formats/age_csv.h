#pragma once

#include "libcore/formats/reading_json.h"

#include <ostream>
#include <span>

namespace pithward {

/// Writes a line for each reading: the core, its tree and site, the year of its pith and the year in which the tree was
/// established, both with their 90 % intervals (measure/age.h), and the allowance between them. Cells of what is not
/// known are empty.
void write_ages_csv(std::ostream& out, std::span<const MeasuredReading> readings);

/// Writes a line for each ring of each reading: its year, its width in mm and what it adds to the stem's cross-section
/// in mm^2, with the 90 % interval (measure/basal_area.h). Oldest first; empty cells where nothing is known.
void write_basal_area_csv(std::ostream& out, std::span<const MeasuredReading> readings);

} // namespace pithward
