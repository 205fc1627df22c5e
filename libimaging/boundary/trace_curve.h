#pragma once

#include <vector>

namespace pithward::boundary {

/// What one group of lanes says.
struct Shift {
    double u = 0.0;
    double columns = 0.0; ///< Shift against the profile.
    double weight = 0.0;  ///< Inverse variance up to a factor.
    double gain = 0.0;    ///< Height of the change here against that of the profile.
};

/// Robust polynomial through the shifts near the path: place, slope and their deviation.
struct Curve {
    double at_path = 0.0; ///< Columns.
    double slope = 0.0;   ///< Columns for each mm across.
    double bend = 0.0;
    double sd = 0.5; ///< Columns, of `at_path`.
};

/// Tukey's biweight over the shifts within `curve_reach_mm` of the path. Fewer than three that say something: no
/// change, with a wide deviation.
[[nodiscard]] Curve fit_curve(const std::vector<Shift>& shifts);

/// Share of the groups that show the change, weighted by wood, on one side or on both.
[[nodiscard]] double support_of(const std::vector<Shift>& shifts, double from_u, double to_u);

/// Half breadth around the path.
inline constexpr double curve_reach_mm = 1.2;

} // namespace pithward::boundary
