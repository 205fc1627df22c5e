#pragma once

#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <cstdint>
#include <vector>

namespace pithward::test {

/// The scale of the made-up scan, in both directions.
inline constexpr double px_per_mm = 50.0;

/// Where a place of the straight path lies on the scan.
[[nodiscard]] ImagePoint on_straight_path(double s_mm);

/// A reading along a straight path of 40 mm toward +x, with boundaries square to it at these places (mm) and the
/// numbers 1, 2, ... as their ids.
[[nodiscard]] Reading straight_reading(const std::vector<double>& places_mm);

[[nodiscard]] Break break_at(double from_mm, double to_mm, Break::Kind kind, std::optional<int> rings_lost = 0);

[[nodiscard]] AbsentRing absent_at(std::int64_t boundary);

/// A pith on the core.
[[nodiscard]] Pith pith_at(double s_mm);

/// The widths of a series; -1 stands for a gap, so that a difference shows in one line.
[[nodiscard]] std::vector<double> widths_mm(const RingSeries& series);

/// The years of its rings; 9999 stands for none.
[[nodiscard]] std::vector<int> ring_years(const RingSeries& series);

/// The years of its boundaries; 9999 stands for none.
[[nodiscard]] std::vector<int> boundary_years(const RingSeries& series);

/// The series of a reading that has to be measurable.
[[nodiscard]] RingSeries measured(const Reading& reading);

/// Compares widths to a nanometre.
void expect_widths(const RingSeries& series, const std::vector<double>& expected_mm);

} // namespace pithward::test
