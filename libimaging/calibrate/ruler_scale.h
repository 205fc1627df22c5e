#pragma once

#include "libcore/specimen/calibration.h"
#include "libcore/specimen/outcome.h"
#include "libimaging/calibrate/graduation.h"
#include "libimaging/calibrate/ruler_line.h"
#include "libimaging/scan/scan_file.h"

#include <optional>

namespace pithward {

/// The scale that one ruler on a scan gives along itself.
struct RulerScale {
    /// How it is known what the distance between two marks is.
    enum class Basis { Given, LengthsOfMarks, ToldScale };

    RulerLine line;
    ImagePoint normal;        ///< Unit vector in pixels, square to the marks.
    double px_per_mm = 0.0;   ///< Along it.
    double relative_sd = 0.0; ///< Of px_per_mm, from the scatter of the marks. What the ruler's maker got wrong is not
                              ///< in it.
    std::optional<Graduation> graduation;                 ///< Nothing where two points were given.
    std::optional<Graduation> graduation_by_mark_lengths; ///< What these say, where they say it clearly.
    Basis basis = Basis::Given;
    int marks = 0;           ///< That the scale follows from.
    double scatter_mm = 0.0; ///< Standard deviation of a mark's place about the equal steps.
};

/// The scale from two points a known distance apart. Each is taken to be placed to `point_sd_px`. `told` is what is
/// known of the scale beforehand; only its ratio of y to x is used. Fails on a line that is not on the scan and on a
/// distance that makes no sense.
[[nodiscard]] Outcome<RulerScale> scale_between(const Scan& scan, const RulerLine& line, Millimetres apart,
                                                const std::optional<Calibration>& told);

/// The scale from the marks that a line crosses. In steps:
///
/// 1. The steps of the marks in the mean profile beside the line (find_lattice).
/// 2. Each mark's place by fitting the common shape of the marks; the slant of the marks from doing so row by row.
/// 3. A robust straight line, number against place: its slope over the graduation is the scale, its deviation the
///    scale's. Where finer marks stand beside the line, again along those.
/// 4. With no `graduation` given, the pattern in which longer marks return; where it shows none, that graduation with
///    which the scale agrees within a tenth with what was `told`.
///
/// Fails with the reason in words where the line leaves the scan or is too short, and where no equal steps are found,
/// as on wood; and where the graduation can't be told.
[[nodiscard]] Outcome<RulerScale> scale_along(const ScanFile& scan, const RulerLine& line,
                                              std::optional<Graduation> graduation,
                                              const std::optional<Calibration>& told);

/// Pixels to the millimetre square to marks with this unit normal in pixels: sqrt((n_x p_x)^2 + (n_y p_y)^2), where p_x
/// and p_y are the scales. (Square to them on the ruler, whose pixels need not be square.)
[[nodiscard]] double px_per_mm_along(const Calibration& calibration, ImagePoint normal);

/// Standard deviation of a point placed by hand or told by another program, in pixels (assumed).
inline constexpr double point_sd_px = 1.0;

} // namespace pithward
