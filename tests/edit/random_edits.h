#pragma once

#include "libcore/edit/document.h"

#include <random>

namespace pithward::test {

/// A made-up reading along a straight path, with candidates, breaks, absent rings and findings of each kind of change.
[[nodiscard]] Reading random_reading(std::mt19937& random);

/// An edit of some kind that fits, or nearly fits, the reading: some are refused.
[[nodiscard]] Edit random_edit(const Document& document, std::mt19937& random);

/// An edit of any kind with any values, nearly none of which fit a reading: groups in groups, odd texts, odd numbers.
[[nodiscard]] Edit any_edit(std::mt19937& random, int depth = 0);

} // namespace pithward::test
