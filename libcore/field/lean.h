#pragma once

#include "libcore/field/remark.h"
#include "libcore/specimen/site.h"

#include <optional>

namespace pithward::field {

/// The angle between a compass direction and a line, that is a direction and its opposite: 0 to 90 degrees.
[[nodiscard]] double angle_to_line(double azimuth_deg, double line_deg);

/// A core that was taken nearer than 60 degrees to the line of lean: reaction wood is likely. In conifers compression
/// wood lies on the side that the stem leans to, in hardwoods tension wood on the upper side; coring square to the lean
/// avoids both (common practice of the trade). Where no lean is noted and the tree stands on a slope, the line of the
/// slope's fall takes its place, since stems lean that way: core along the contour. Nothing where the sheet does not
/// tell, or where it notes a lean of 0 degrees.
[[nodiscard]] std::optional<Remark> lean_remark(const Tree& tree, const Core& core, WoodType wood);

} // namespace pithward::field
