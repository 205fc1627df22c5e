#pragma once

#include "libcore/specimen/calibration.h"
#include "libcore/specimen/units.h"

#include <vector>

namespace pithward {

/// The map between a leg's strip (s along, u across, in mm) and its scan (pixels).
///
/// - A point with u = 0 lies exactly on the leg's polyline; beyond its ends the first and last segment go on straight.
/// - The direction across is square to the chord over `bend_mm` on both sides, so the strip does not tear at a bend.
/// - u is positive to the right of the walker (toward +y on a leg that runs toward +x).
class StripGeometry {
public:
    /// Needs at least two different points; repeated points are skipped.
    StripGeometry(const std::vector<ImagePoint>& points, const Calibration& calibration);

    [[nodiscard]] double length_mm() const { return s_.back(); }
    [[nodiscard]] ImagePoint image_point(StripPoint at) const;
    /// Direction in the image of a line that moves `slope` mm along the leg for each mm across it, in [0, pi).
    [[nodiscard]] double image_direction(double s_mm, double slope) const;

    static constexpr double bend_mm = 1.5;

private:
    struct Vector {
        double x, y;
    };
    [[nodiscard]] Vector centre(double s_mm) const;
    [[nodiscard]] Vector along(double s_mm) const;

    std::vector<Vector> points_; ///< In mm.
    std::vector<double> s_;
    double px_per_mm_x_;
    double px_per_mm_y_;
};

} // namespace pithward
