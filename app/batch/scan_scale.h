#pragma once

#include "libcore/specimen/calibration.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libimaging/calibrate/ruler_calibration.h"
#include "libimaging/scan/scan_file.h"

#include <future>
#include <optional>
#include <vector>

namespace pithward::batch {

/// The rulers that a command was told of.
struct RulerTask {
    /// What is done about rulers that nobody drew a line along: one that is found is compared with the scale told, or
    /// gives the scale, or is not looked for.
    enum class Search { Compare, Use, No };

    std::vector<RulerLine> lines;
    Search search = Search::Compare;
    std::optional<Graduation> graduation; ///< Nothing: told by the marks' lengths.
    std::optional<Millimetres> apart;     ///< Of the two points of each line, which then are not graduations.
};

/// The scale of one scan, and where it comes from.
struct ScanScale {
    std::optional<Calibration> told; ///< By the file's tag or the user.
    std::optional<RulerCalibration> rulers;
    /// A ruler on the scan that is only compared. It is sought while the cores are read, so the scan must live as long.
    std::shared_future<Outcome<std::optional<RulerScale>>> seen;

    [[nodiscard]] Calibration for_path(const std::vector<ImagePoint>& path) const;
    /// Says where scales disagree. Waits for the ruler. Fails where the scan can't be read.
    [[nodiscard]] Outcome<void> add_findings(Reading& reading) const;
};

/// The scale by the rulers given or found, else by the user's word, else by the file's tag. Fails where none of these
/// will do.
[[nodiscard]] Outcome<ScanScale> scale_of(const ScanFile& scan, std::optional<double> given_dpi, const RulerTask& task);

} // namespace pithward::batch
