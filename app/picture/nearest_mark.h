#pragma once

#include "app/picture/measured_core.h"

#include <cstddef>
#include <optional>
#include <string>

namespace pithward::picture {

/// From places on the scan to what lies there: what pointing rests on. All places are image points.

/// A boundary under the cursor.
struct NearBoundary {
    BoundaryId id;
    bool at_end = false; ///< Nearer to the end of its line than to the path: here it is taken by its end.
};

/// The boundary whose line passes within `reach_px` of a place on the wood.
[[nodiscard]] std::optional<NearBoundary> nearest_boundary(const MeasuredCore& core, const std::string& scan,
                                                           ImagePoint at, double reach_px);
/// The candidate turned down that is nearest to a place along the path, within `reach_px`.
[[nodiscard]] std::optional<CandidateId> nearest_candidate(const MeasuredCore& core, const std::string& scan,
                                                           ImagePoint at, double reach_px);

/// The break on whose stretch a place lies, give or take `reach_px`.
[[nodiscard]] std::optional<BreakId> nearest_break(const MeasuredCore& core, const std::string& scan, ImagePoint at,
                                                   double reach_px);

/// The foot of a place on the path.
struct PathFoot {
    std::size_t leg = 0;
    ImagePoint at;
    double square = 0.0; ///< Direction square to the path there, radians in [0, pi).
};

/// Nothing when the place is further than `reach_px` from the path on this scan.
[[nodiscard]] std::optional<PathFoot> foot_on_path(const Reading& reading, const std::string& scan, ImagePoint at,
                                                   double reach_px);

/// Direction from one place to another as a line without a sense, radians in [0, pi).
[[nodiscard]] double line_direction(ImagePoint from, ImagePoint to);

[[nodiscard]] const Boundary* boundary_of(const Reading& reading, BoundaryId id);

} // namespace pithward::picture
