#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/width_series.h"

#include <istream>
#include <ostream>
#include <string>
#include <vector>

namespace pithward {

/// Reads a decadal file (design, section 6; docs/formats.md). What is clear is read, and whatever a person should know
/// of it is put into the table's remarks; what is broken or can be read in two ways is refused, with line and column.
///
/// 1. The end mark of a series tells its unit: 999 is 0.01 mm, -9999 is 0.001 mm, each series for itself.
/// 2. 999 inside a series that goes on is a value; another negative number is a gap; 0 is a locally absent ring.
/// 3. A series that goes on after an end mark has a gap between.
/// 4. A series without an end mark takes the unit that all the others of the file have.
[[nodiscard]] Outcome<WidthTable> read_decadal(std::istream& in);

/// Writes a decadal file and answers with what a person should know of it.
///
/// 1. A series is written in its own unit if each of its values is a whole number of steps and none is 9.99 mm, which
///    in 0.01 mm would be an end mark; else in 0.001 mm.
/// 2. No value is altered but by rounding to 0.001 mm; a width that would become 0 is refused.
/// 3. A gap is written as -999.
/// 4. Identifiers that don't fit are shortened as `formats::fitting_identifiers` tells.
[[nodiscard]] Outcome<std::vector<std::string>> write_decadal(std::ostream& out, const WidthTable& table);

} // namespace pithward
