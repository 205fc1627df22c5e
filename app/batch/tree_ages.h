#pragma once

#include "libcore/edit/document.h"
#include "libcore/record/project.h"

namespace pithward::batch {

/// Holds the cores of each tree against each other, by the years of their piths, and notes which of them differ
/// beyond both intervals, on readings that no person has confirmed anything of. Answers with how many findings came in.
[[nodiscard]] Outcome<int> compare_tree_ages(record::Project& project, const EditStamp& stamp);

} // namespace pithward::batch
