#pragma once

#include "libcore/record/project.h"

#include <optional>

namespace pithward::bench {

/// Writes into a project what was done to a reading on the bench. `named`: the record that this one takes back, as the
/// bench has it; refused where the project has another in its place, since somebody else has worked on the reading.
[[nodiscard]] Outcome<std::optional<EditRecord>> written_edit(record::Project& project, ReadingId reading,
                                                              const EditRecord& record,
                                                              const std::optional<EditRecord>& named);

} // namespace pithward::bench
