#pragma once

#include "libcore/specimen/outcome.h"
#include "libimaging/calibrate/mark_lengths.h"
#include "libimaging/calibrate/ruler_line.h"
#include "libimaging/scan/scan_file.h"

namespace pithward::calibrate {

/// The marks along a line, measured.
struct RulerMarks {
    RulerLine line;         ///< The one asked for, or the one beside it that crosses the finest marks.
    MarkRows rows;          ///< Where they stand.
    double period_sd = 0.0; ///< Of rows.period, in pixels.
    double slant_sd = 0.0;
    int good = 0;         ///< Marks that the period follows from.
    double scatter = 0.0; ///< Of a mark's place, in pixels.
};

/// Finds and measures the marks that a line crosses. Fails where there are no equal steps.
[[nodiscard]] Outcome<RulerMarks> measure_marks(const ScanFile& scan, const RulerLine& line);

/// The band in which the lengths of marks are seen: eight periods on both sides, from squares of a sixteenth.
[[nodiscard]] Outcome<Band> band_of_lengths(const ScanFile& scan, const RulerMarks& marks);

} // namespace pithward::calibrate
