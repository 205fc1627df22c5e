#pragma once

#include "libimaging/calibrate/mark_lattice.h"
#include "libimaging/calibrate/robust_line.h"

#include <optional>
#include <vector>

namespace pithward::calibrate {

/// What a ruler's marks look like along the line: brightness against the distance from a mark's place.
class MarkShape {
public:
    /// The median of the profile about all places of the lattice, so that missing, doubled and soiled marks have no
    /// say.
    MarkShape(const std::vector<double>& profile, const Lattice& lattice);

    [[nodiscard]] double value(double from_place) const;
    [[nodiscard]] double reach() const { return reach_; } ///< Known so far on both sides.
    [[nodiscard]] double contrast() const;                ///< Between the brightest and the darkest.

    /// The narrow part of the shape, the mark itself.
    struct Stroke {
        double middle = 0.0; ///< From the place of the lattice.
        double breadth = 0.0;
        bool dark = true;
    };
    [[nodiscard]] Stroke stroke(double period) const;

private:
    double reach_;
    double step_;
    std::vector<double> values_;
};

/// A mark that was found near its place.
struct LocatedMark {
    int index = 0;
    double at = 0.0; ///< In samples.
};

/// Each mark's place to a fraction of a sample: the shape moved, scaled and lifted onto the profile by least squares
/// (Gauss and Newton). Marks of too little contrast, or not of this shape, are left out.
[[nodiscard]] std::vector<LocatedMark> locate_marks(const std::vector<double>& profile, const Lattice& lattice,
                                                    const MarkShape& shape);

/// The line through the places of marks, index against place.
[[nodiscard]] std::optional<RobustLine> line_through(const std::vector<LocatedMark>& marks, const Lattice& lattice);

} // namespace pithward::calibrate
