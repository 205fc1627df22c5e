#pragma once

#include "libimaging/boundary/mark.h"

#include <vector>

namespace pithward::boundary {

/// Sets the signs that compare a mark with the strong marks around it: `relative_fall` and `relative_edge`. A strong
/// mark is one whose fall, weighed by its sharpness and support, is among the upper half within `neighbourhood_mm`.
void compare_with_neighbours(std::vector<Mark>& marks, double px_mm);

/// Sets the levels before and after each mark, over `window_mm` of the profile that the marks were found in. Call it
/// after `compare_with_neighbours`.
void set_levels(std::vector<Mark>& marks, const std::vector<float>& profile, double window_mm, double px_mm);

inline constexpr double neighbourhood_mm = 10.0;

} // namespace pithward::boundary
