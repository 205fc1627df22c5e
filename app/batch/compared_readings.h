#pragma once

#include "libcore/record/project.h"

#include <span>
#include <vector>

namespace pithward::batch {

/// The accepted reading of each core held against each of its other readings, where both can be measured and have a
/// scan in common. Fails on a project that can't be read.
[[nodiscard]] Outcome<std::vector<record::ReadingComparison>>
compared_readings(const record::Project& project, std::span<const record::CoreEntry> cores,
                  std::span<const record::ReadingEntry> readings);

} // namespace pithward::batch
