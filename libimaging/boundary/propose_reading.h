#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/work.h"
#include "libimaging/boundary/path_to_pith.h"
#include "libimaging/boundary/wood/judge_wood.h"
#include "libimaging/scan/scan_file.h"

#include <optional>
#include <string>
#include <vector>

namespace pithward {

/// What the program is asked to read.
struct ReadingRequest {
    std::string scan_name; ///< Goes into the path's leg.
    Calibration calibration;
    std::vector<ImagePoint> path; ///< From bark to pith, at least two different points.
    BarkEnd bark_end;
    std::optional<WoodType> wood;                  ///< Nothing: as `judged`, or judged from the wood.
    std::optional<boundary::WoodJudgement> judged; ///< Where the wood was judged before (find_cores).
    std::optional<PithOnCore> pith;                ///< Where the pith was seen on the core (find_cores).
    OuterWood outer = OuterWood::Unknown;
    std::optional<Year> last_year;
    double breadth_mm =
        0.0; ///< Breadth of the core's surface where it is known: what lies beside it is not read. 0: unknown.

    /// Why the request can't be carried out on a scan of this header; nothing when it can.
    [[nodiscard]] std::optional<Fault> validate(const Scan& scan) const;
};

class KeptPieces;

/// Finds the ring boundaries along a path: the program's reading, in state Proposed, with candidates turned down,
/// breaks and findings. Fails on a path outside the scan, of one point, or with no wood under it. `kept`: stretches of
/// the scan that were straightened before (kept_pieces.h); null for none. The reading is the same.
[[nodiscard]] Outcome<Reading> propose_reading(const ScanFile& scan, const ReadingRequest& request,
                                               const Work& work = {}, KeptPieces* kept = nullptr);

} // namespace pithward
