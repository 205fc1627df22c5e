#pragma once

#include "libcore/field/remark.h"
#include "libcore/specimen/ring_series.h"
#include "libcore/specimen/site.h"

#include <optional>

namespace pithward::field {

/// A distance in mm that lies somewhere between two ends.
struct DepthRange {
    double low_mm = 0.0;
    double high_mm = 0.0;
};

/// Radius of a stem's wood where it was cored, fresh: half the diameter at breast height less the bark. Allowed for are
/// taper, 10 mm of diameter for each metre between breast height (1.3 m) and the core, the place of the core where it
/// is not told (a metre), bark that is not told (up to a twentieth of the diameter), and growth up to a tenth
/// eccentric. All of these are assumed. Nothing without a diameter.
[[nodiscard]] std::optional<DepthRange> wood_radius(const Tree& tree, const Core& core);

/// Fresh length from bark to pith, from what was measured dry: wood shrinks by 2 to 6 % in drying (common practice of
/// the trade; no source).
[[nodiscard]] DepthRange fresh_depth(double dry_low_mm, double dry_high_mm);

/// A core whose length and the distance from its end to the pith can't be half of the stem's diameter, whatever the
/// allowances above. Nothing without a pith, without a diameter, or where the series has gaps or outer wood is lost.
[[nodiscard]] std::optional<Remark> depth_remark(const Tree& tree, const Core& core, const Reading& reading,
                                                 const RingSeries& series);

} // namespace pithward::field
