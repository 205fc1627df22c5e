#pragma once

#include "tests/accuracy/case_folder.h"
#include "tests/accuracy/case_score.h"

#include <span>
#include <vector>

namespace pithward::accuracy {

/// Reads each core along its true path, its wood given and its outer end not, as `pithward measure` does, and scores
/// it. One thread a core, all processors of the machine. A core that can't be read is told on standard error and scored
/// as nothing found.
[[nodiscard]] std::vector<CaseScore> read_cases(std::span<const Case> cases);

} // namespace pithward::accuracy
