#pragma once

#include "demo-scans/maker/presets.h"

#include <span>
#include <string>

namespace pithward::demo {

/// What a graded core is meant to try.
enum class Grade { ConiferClear, ConiferHard, ConiferNarrow, RingPorous, DiffusePorous, Broken };

struct GradeName {
    Grade grade;
    const char* name;
};

[[nodiscard]] std::span<const GradeName> grades();

/// A core of a kind whose disturbances all have one strength, 1 (slight), 2 or 3 (strong). Each core has some of those
/// of its kind, a large enough set has all.
[[nodiscard]] Order graded_core(Grade grade, int strength, std::uint64_t seed, int number);

} // namespace pithward::demo
