#pragma once

#include "libcore/record/project.h"

#include <string>
#include <vector>

namespace pithward::bench {

/// Writes what a person changed of a core's field data, and what follows from it: open findings of the tree's readings
/// that only the former data gave go, new ones come (as edits in the program's name). Answers with the readings that
/// were changed. Refused as `Project::put_details` says.
[[nodiscard]] Outcome<std::vector<ReadingId>> change_details(record::Project& project, const record::CoreEntry& before,
                                                             const record::CoreEntry& after, const std::string& label,
                                                             const EditStamp& stamp);

} // namespace pithward::bench
