#pragma once

#include "demo-scans/maker/core_model.h"
#include "demo-scans/maker/ink.h"
#include "demo-scans/maker/mount.h"

#include <vector>

namespace pithward::demo {

/// A whole scan before the scanner sees it: cores on a board, with what lies on the surface.
struct Sheet {
    int width = 0;
    int height = 0;
    double px_per_mm = 1.0;
    std::uint64_t seed = 1;
    Board board;
    Scanner scanner;
    std::vector<CoreModel> cores;
    std::vector<Stroke> strokes; ///< Scratches, dust, pencil, in the order in which they came.
    double scratches = 0.0;      ///< Strength of the fine sanding marks.
    double scratch_angle_deg = 0.0;
    int ruler_top = 0; ///< First row of the rule; below the picture where there is none.
};

/// Lays cores out below each other and puts the marks on.
[[nodiscard]] Sheet lay_out(const std::vector<Scene>& scenes);

/// The sheet as the scanner sees it.
[[nodiscard]] Picture scan(const Sheet& sheet);

/// Sanding scratches, dust, pencil marks and label.
[[nodiscard]] std::vector<Stroke> surface_marks(const Sheet& sheet);

/// The scale's steel rule: graduations each half millimetre, numbers each centimetre. Row and column in pixels.
[[nodiscard]] Colour ruler_colour(const Sheet& sheet, double x, double y);
/// The numbers on it.
[[nodiscard]] std::vector<Stroke> ruler_numbers(const Sheet& sheet);

/// Column of the rule's zero.
[[nodiscard]] double ruler_zero(const Sheet& sheet);

} // namespace pithward::demo
