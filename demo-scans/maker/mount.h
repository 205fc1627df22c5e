#pragma once

#include "demo-scans/maker/colour.h"
#include "demo-scans/maker/scene.h"

#include <vector>

namespace pithward::demo {

/// The board that the cores are glued on, and what is behind it. Lengths in mm; q across the board, p along it.
struct Board {
    Mount mount;
    std::uint64_t seed = 1;
    double px_per_mm = 1.0;
    ImagePoint middle;
    double tilt_deg = 0.0;
    double cosine = 1.0; ///< Of the tilt.
    double sine = 0.0;
    double half_width_mm = 5.0;
    double half_length_mm = 60.0;
    struct Groove {
        double q = 0.0;
        double half_mm = 2.6;
    };
    std::vector<Groove> grooves;
    double glue = 0.3;

    struct Place {
        double p = 0.0;
        double q = 0.0;
    };
    [[nodiscard]] Place place(ImagePoint at) const;
    /// What is seen there with no core on the board.
    [[nodiscard]] Colour colour(ImagePoint at) const;
};

} // namespace pithward::demo
