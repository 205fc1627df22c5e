#pragma once

#include "libcore/formats/study_notes.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/width_series.h"

#include <istream>
#include <ostream>
#include <string>
#include <vector>

namespace pithward {

/// Reads series from the tree-ring data bank's template, version 4.0: metadata on lines with #, one ## line for each
/// variable, and a tab-separated table with years (CE) down and series across, in the unit that the ## lines give.
/// A missing value inside a series is a gap, and so, with a remark, is a negative number.
[[nodiscard]] Outcome<WidthTable> read_archive_template(std::istream& in);

/// Writes the same, with what the notes know of the study and the rest left to be filled in, and answers with what a
/// person should know of it. Undated series are refused: the table is one of calendar years.
[[nodiscard]] Outcome<std::vector<std::string>> write_archive_template(std::ostream& out, const WidthTable& table,
                                                                       const StudyNotes& notes);
/// The same without notes.
[[nodiscard]] Outcome<std::vector<std::string>> write_archive_template(std::ostream& out, const WidthTable& table);

} // namespace pithward
