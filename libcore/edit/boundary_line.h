#pragma once

#include "libcore/specimen/boundary.h"
#include "libcore/specimen/path.h"

#include <optional>
#include <vector>

namespace pithward {

/// The line of a boundary or a candidate across the wood: the curve that was traced, going on straight at both ends,
/// else a straight line in its direction.
class BoundaryLine {
public:
    /// `reach_px`: how far the line goes on beyond the curve, or to either side of `at` without one.
    BoundaryLine(const std::vector<ImagePoint>& curve, ImagePoint at, double tangent, double reach_px);

    /// Where it crosses a leg, nearest to a place; nothing where it does not. A leg goes on straight by `beyond_start`
    /// and `beyond_end` pixels past its ends.
    [[nodiscard]] std::optional<ImagePoint> crossing(const Leg& leg, ImagePoint near, double beyond_start,
                                                     double beyond_end) const;
    /// The place on it that is nearest to a point, and its direction there, radians in [0, pi).
    struct Foot {
        ImagePoint at;
        double tangent = 0.0;
    };
    [[nodiscard]] Foot foot(ImagePoint of) const;

private:
    [[nodiscard]] ImagePoint at_length(double along) const;

    std::vector<ImagePoint> points_;
};

} // namespace pithward
