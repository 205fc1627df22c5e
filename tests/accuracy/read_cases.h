#pragma once

#include "tests/accuracy/case_folder.h"
#include "tests/accuracy/case_score.h"

#include <span>
#include <vector>

namespace pithward::accuracy {

/// Reads and scores each core (read_each.h). One that can't be read is scored as nothing found.
[[nodiscard]] std::vector<CaseScore> read_cases(std::span<const Case> cases);

} // namespace pithward::accuracy
