#pragma once

#include "libcore/measure/leg_line.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"

#include <vector>

namespace pithward {

/// Where things lie along a path of several legs: each leg counts from where it is entered to where it is left.
class PathPlaces {
public:
    /// Fails on a path without legs, a leg of fewer than two points, a scan without calibration, or a join that names
    /// no mark.
    [[nodiscard]] static Outcome<PathPlaces> of(const Reading& reading);

    /// Distance along the whole path, mm.
    [[nodiscard]] double along(std::size_t leg, ImagePoint at) const;
    /// Direction of a leg on the wood at the foot of a place, radians.
    [[nodiscard]] double direction(std::size_t leg, ImagePoint at) const { return lines_[leg].direction(at); }
    [[nodiscard]] const Calibration& calibration(std::size_t leg) const { return calibrations_[leg]; }

private:
    std::vector<LegLine> lines_;
    std::vector<Calibration> calibrations_;
    std::vector<double> offset_; ///< Added to a leg's own distance.
};

} // namespace pithward
