#pragma once

#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"
#include "tests/accuracy/pairing.h"
#include "tests/accuracy/review_places.h"

namespace pithward::accuracy {

/// Errors of ring widths, each as a share of its stated deviation: of rings whose two boundaries were both found with
/// none proposed between, and which no break cuts. A locally absent or too thin ring between them adds to the true
/// width. Where the reading has as many dated rings as spaces between boundaries they are taken in order, else by year.
[[nodiscard]] std::vector<double> width_errors(const demo::Truth& truth, const PlacedTruth& placed,
                                               std::span<const Proposed> proposed, std::span<const Pair> pairs,
                                               const RingSeries& series);

} // namespace pithward::accuracy
