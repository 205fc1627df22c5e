#pragma once

#include "libcore/specimen/reading.h"

#include <cstdint>
#include <vector>

namespace pithward::test {

/// A stem's section as a formula, and how a straight core's inner end is traced on it. Ring k lies at
/// r_k (1 + e cos(f - f0) + o cos 2(f - f1)) + swells from the pith; the core runs toward +x at y = 0.
struct TracedStem {
    double pith_x_mm = 10.0; ///< From the innermost boundary on the path.
    double pith_y_mm = 0.0;
    std::vector<double> widths_mm{std::vector<double>(8, 2.0)}; ///< On the core, outward.
    double eccentricity = 0.0;
    double widest = 0.0; ///< Radians from +x.
    double oval = 0.0;
    double swell = 0.0;    ///< Twice the standard deviation of the swells, relative to the radius.
    double lasting = 6.0;  ///< Rings until a swell has faded to 1/e.
    double noise_mm = 0.0; ///< Of each traced point.
    double half_breadth_mm = 2.3;
    double path_beyond_mm = 0.4; ///< Of the innermost boundary.
    std::uint64_t seed = 1;
};

inline constexpr double traced_px_per_mm = 47.244; ///< 1200 dpi.

/// The reading that tracing that core gives. Widths are square to the rings to within the tracing.
[[nodiscard]] Reading traced_reading(const TracedStem& stem);

/// Where the pith lies on its scan.
[[nodiscard]] ImagePoint pith_on_scan(const TracedStem& stem);

} // namespace pithward::test
