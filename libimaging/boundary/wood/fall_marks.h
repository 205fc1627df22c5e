#pragma once

#include "libimaging/boundary/falls.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/mark.h"
#include "libimaging/boundary/odds.h"

#include <vector>

namespace pithward::boundary {

/// One mark for each fall, at its place and with what the fall tells of it.
[[nodiscard]] std::vector<Mark> marks_from_falls(const std::vector<Fall>& falls, double px_mm);

/// Sets what traced marks show beside each other, and their log odds. `line` is the profile that they were found in;
/// the levels before and after each are taken over `level_mm`.
void judge_marks(std::vector<Mark>& marks, const std::vector<float>& line, double level_mm, double px_mm,
                 const OddsModel& odds);

/// Adds to the deviations of traced marks what stays however many lanes agree: `scatter_mm`, for the kind of wood.
void widen_deviations(std::vector<Mark>& marks, double scatter_mm);

} // namespace pithward::boundary
