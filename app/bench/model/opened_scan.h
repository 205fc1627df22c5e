#pragma once

#include "app/bench/model/field_data.h"
#include "app/bench/model/ruler_reading.h"
#include "libcore/pith/growth.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/scan.h"
#include "libimaging/boundary/boundary_near.h"
#include "libimaging/boundary/find_cores.h"
#include "libimaging/boundary/propose_reading.h"
#include "libimaging/strip/strip_picture.h"

#include <QImage>
#include <QRect>
#include <functional>
#include <string>
#include <vector>

namespace pithward::bench {

/// Pixels of a region (full-resolution coordinates), averaged over squares of `reduction` pixels. From any thread.
using TileSource = std::function<Outcome<QImage>(QRect region, int reduction)>;

/// The whole scan averaged over squares of `reduction` pixels, in parts as they are read. From any thread, and `part`
/// is called from any.
using CoarseSource = std::function<Outcome<void>(
    int reduction, const std::function<void(int first_row, const QImage& rows)>& part, const Work& work)>;

/// A core straightened, to be looked at.
struct StripImage {
    QImage picture;           ///< Format_RGB32; columns from the first point of the path to its last.
    std::vector<float> light; ///< Light profile, one value a column, 0 to 1.
    double length_mm = 0.0;   ///< What the columns cover.
};

/// A scan that the bench works on: its header and what can be done with it. All calls may come from any thread.
struct OpenedScan {
    std::string path;
    std::string named; ///< What a project calls it; empty outside one.
    Scan header;
    std::optional<FieldData> field; ///< What a field sheet beside the scan says of its core.
    TileSource pixels;
    CoarseSource coarse; ///< May be empty: then the whole comes through `pixels`.
    std::function<Outcome<std::vector<FoundCore>>(const Calibration&, const Work&)> find_cores;
    std::function<Outcome<Reading>(const ReadingRequest&, const Work&)> propose;
    std::function<Outcome<std::optional<Candidate>>(const NearRequest&)> near;
    std::function<Outcome<StripImage>(const StripRequest&, const Work&)> strip;
    /// Measures the ruler along a line, or without one looks for a ruler; nothing when none is seen.
    std::function<Outcome<std::optional<RulerReading>>(const std::optional<RulerLine>& line,
                                                       const std::optional<Calibration>& told, const Work&)>
        ruler;
    std::function<bool()> is_damaged; ///< Reading has met damage: the scan is of no use.
    /// What the other cores of its site tell of growth near the pith; nothing outside a project or where too few do.
    std::optional<pith::GrowthBeforehand> growth = {};

    /// The name that legs and calibrations are keyed by: the project's, else the file's name without its folder.
    [[nodiscard]] std::string name() const;
};

using ScanOpener = std::function<Outcome<OpenedScan>(const std::string& path)>;

/// Opens a scan with libimaging.
[[nodiscard]] Outcome<OpenedScan> open_scan(const std::string& path);

} // namespace pithward::bench
