#pragma once

#include "libcore/review/standing.h"

#include <span>
#include <string>
#include <vector>

namespace pithward::review {

/// What an export says of its readings, in two lines: how much was looked at, and who marked and passed how many
/// readings. "Boundaries: 120, of which 8 looked at, 110 confirmed in bulk, 2 confirmed by nobody"; "Readings: 3, of
/// which 2 passed (by Sue 2), 1 marked (by Ida 1); ...". Readings that no second person has seen whole are counted.
[[nodiscard]] std::vector<std::string> statement(std::span<const Standing> readings);

} // namespace pithward::review
