#pragma once

#include "libcore/specimen/units.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pithward::record {

/// A traced curve with its points on a grid of 1/64 pixel, a hundredth of what can be seen: so it takes a few bytes a
/// point. Done once, when a reading comes into a project.
[[nodiscard]] std::vector<ImagePoint> on_curve_grid(std::vector<ImagePoint> curve);

/// A curve as bytes, exactly: as steps from point to point where all are on the grid, else as they are.
[[nodiscard]] std::string curve_bytes(const std::vector<ImagePoint>& curve);
/// Nothing where the bytes are no curve.
[[nodiscard]] std::optional<std::vector<ImagePoint>> curve_from(std::string_view bytes);

} // namespace pithward::record
