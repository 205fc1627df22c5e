#pragma once

#include "libcore/specimen/calibration.h"
#include "libcore/specimen/path.h"

#include <cstddef>
#include <vector>

namespace pithward {

/// A place or a direction on the wood, in mm: pixels divided by the scale of their direction.
struct WoodVector {
    double x = 0.0;
    double y = 0.0;
    friend WoodVector operator-(WoodVector a, WoodVector b) { return {a.x - b.x, a.y - b.y}; }
};

[[nodiscard]] WoodVector on_wood(ImagePoint at, const Calibration& calibration);

/// The direction of an image line on the wood, radians: scales that differ in x and y turn it.
[[nodiscard]] double direction_on_wood(double image_direction, const Calibration& calibration);

/// The polyline of a leg in mm.
class LegLine {
public:
    /// Needs at least two points, not all the same.
    LegLine(const Leg& leg, const Calibration& calibration);

    [[nodiscard]] double length_mm() const { return s_.back(); }
    /// Distance along the leg to the foot of a place; beyond either end the leg goes on straight.
    [[nodiscard]] double along(ImagePoint at) const { return foot(at).s_mm; }
    /// Direction of the leg on the wood at the foot of a place, radians.
    [[nodiscard]] double direction(ImagePoint at) const;

private:
    struct Foot {
        double s_mm = 0.0;
        std::size_t segment = 0;
    };
    [[nodiscard]] Foot foot(ImagePoint at) const;

    Calibration calibration_;
    std::vector<WoodVector> points_;
    std::vector<double> s_;
};

} // namespace pithward
