#pragma once

#include "demo-scans/maker/colour.h"
#include "demo-scans/maker/growth.h"
#include "demo-scans/maker/timber.h"

#include <array>
#include <vector>

namespace pithward::demo {

/// The colour across one ring, from its inner to its outer edge. The last part of the latewood is even in tone, so that
/// the half-way level of the fall to the next ring is well defined.
class RingProfile {
public:
    static constexpr int steps = 256;

    /// Colour at `phase` of the ring, 0 inside to 1 outside.
    [[nodiscard]] Colour at(double phase) const {
        const double place = (phase <= 0.0 ? 0.0 : phase >= 1.0 ? 1.0 : phase) * (steps - 1);
        const int cell = place >= steps - 1 ? steps - 2 : static_cast<int>(place);
        return blend(colours_[static_cast<std::size_t>(cell)], colours_[static_cast<std::size_t>(cell) + 1],
                     place - cell);
    }
    /// Share of the ring from which on it is latewood.
    [[nodiscard]] double latewood_from() const { return latewood_from_; }

private:
    friend std::vector<RingProfile> profiles(const Scene& scene, const std::vector<PlannedRing>& plan);
    std::array<Colour, steps> colours_{};
    double latewood_from_ = 0.7;
};

/// One profile a ring, from pith to bark.
[[nodiscard]] std::vector<RingProfile> profiles(const Scene& scene, const std::vector<PlannedRing>& plan);

/// Colour of tissue of a density between 0 and 1.
[[nodiscard]] Colour tissue_colour(const TimberLook& look, double density);

} // namespace pithward::demo
