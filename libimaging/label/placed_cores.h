#pragma once

#include "libcore/field/scan_place.h"
#include "libcore/specimen/calibration.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/scan.h"
#include "libimaging/boundary/find_cores.h"

#include <optional>
#include <span>
#include <vector>

namespace pithward {

/// A core as it lies on the mount: the numbers of its paths among those found, two of them where it goes past the pith.
using WholeCore = std::vector<std::size_t>;

/// The cores that were found, whole, in the order in which their numbers are counted: from top to bottom, and from left
/// to right in one row; where they stand upright, from left to right, and from top to bottom in one column. Top is that
/// of the view, as the file's orientation tag turns it.
[[nodiscard]] std::vector<WholeCore> whole_cores(std::span<const FoundCore> found, const Calibration& calibration,
                                                 int orientation = 1);

/// Which of a scan's whole cores is at each of the places that are told for it, in their order. A place on a core is
/// that core, whatever else is there. Beside it, or by number, the scan must show as many cores as places are told;
/// fails where it doesn't, where two places give one core, and where several cores have no place. A single core needs
/// none. The fault's `where` is the scan.
[[nodiscard]] Outcome<std::vector<std::size_t>> cores_at(std::span<const std::optional<field::ScanPlace>> places,
                                                         std::span<const WholeCore> cores,
                                                         std::span<const FoundCore> found,
                                                         const Calibration& calibration, const std::string& scan);

} // namespace pithward
