#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/work.h"
#include "libimaging/scan/scan_file.h"
#include "libimaging/strip/strip_geometry.h"

#include <opencv2/core.hpp>

#include <array>

namespace pithward {

/// A strip averaged into narrow lanes along the path: all of its length at full resolution, its breadth in steps of a
/// tenth of a millimetre. Small enough to be held whole whatever the core's length. Lane `centre()` runs along the path
/// itself.
struct Lanes {
    std::array<cv::Mat1f, 3> rgb; ///< Rows are lanes, columns places along the path; values 0 to 1.
    double start_mm = 0.0;        ///< s of column 0.
    double px_mm = 0.02;          ///< Step between columns.
    double lane_mm = 0.1;         ///< Step between lanes.

    [[nodiscard]] int columns() const { return rgb[0].cols; }
    [[nodiscard]] int count() const { return rgb[0].rows; }
    [[nodiscard]] int centre() const { return rgb[0].rows / 2; }
    [[nodiscard]] double s(double column) const { return start_mm + column * px_mm; }
    [[nodiscard]] double u(double lane) const { return (lane - centre()) * lane_mm; }
    [[nodiscard]] double column(double s_mm) const { return (s_mm - start_mm) / px_mm; }
};

class KeptPieces;

struct LanesOptions {
    double half_breadth_mm = 3.5; ///< How far to both sides of the path.
    double beyond_mm = 1.5;       ///< How far beyond both ends of the path.
    double lane_mm = 0.1;         ///< Breadth of a lane.
    KeptPieces* kept = nullptr;   ///< Blocks that were made before; none when null.
};

/// Straightens a leg and averages it into lanes, block by block.
[[nodiscard]] Outcome<Lanes> lanes_along(const ScanFile& scan, const StripGeometry& geometry, double px_per_mm,
                                         const LanesOptions& options = {}, const Work& work = {});

/// The same lanes with columns averaged to about `px_per_mm`; unchanged when they are no finer.
[[nodiscard]] Lanes coarser(const Lanes& lanes, double px_per_mm);

/// The lanes without `share` of their length at each end.
[[nodiscard]] Lanes without_ends(const Lanes& lanes, double share);

/// The lanes within `half_breadth_mm` of the path.
[[nodiscard]] Lanes middle_of(const Lanes& lanes, double half_breadth_mm);

} // namespace pithward
