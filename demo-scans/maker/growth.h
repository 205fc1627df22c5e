#pragma once

#include "demo-scans/maker/scene.h"

#include <cstdint>
#include <vector>

namespace pithward::demo {

/// One ring as it is to be on the core's centre line.
struct PlannedRing {
    int year = 0;
    double width_mm = 0.0; ///< Square to the rings; 0 where it is absent.
    bool wedging = false;  ///< Runs out beside the path.
    bool complete = true;  ///< False for the unfinished ring under the bark.
    bool on_core = true;   ///< False for the rings to the pith.
};

/// The signal of a site, a tree or a core in one year: mean 0, deviation 1, first-order autocorrelation `persistence`.
/// It depends on seed and year alone, so that all cores of a site see the same years.
[[nodiscard]] double year_signal(std::uint64_t seed, int year, double persistence);

/// Widths of `count` rings from pith to bark, the last of them of year `last_year`.
[[nodiscard]] std::vector<double> grow(const Growth& growth, std::uint64_t seed, int count, int last_year);

/// All rings of a scene from pith to bark: those to the pith, those with a width, and the unfinished one.
[[nodiscard]] std::vector<PlannedRing> plan_rings(const Scene& scene);

} // namespace pithward::demo
