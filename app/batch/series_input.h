#pragma once

#include "libcore/dating/site_table.h"
#include "libcore/specimen/outcome.h"

#include <string>
#include <vector>

namespace pithward::batch {

/// The series of some files, made ready for dating.
struct SeriesInput {
    std::vector<dating::TreeSeries> dated;
    std::vector<dating::TreeSeries> undated; ///< Their years only count rings.
    std::vector<std::string> remarks;        ///< What a person should know, with the file's name where it is about one.
};

/// Reads series from files of any series format. An identifier that is there twice gets a number; a series without
/// widths is left out; both are said. Trees are told by the stems of the identifiers. Fails on a file that can't be
/// read, on no series at all, and on years so far apart that they would fill the memory.
[[nodiscard]] Outcome<SeriesInput> read_series(const std::vector<std::string>& files);

} // namespace pithward::batch
