#pragma once

#include "libcore/specimen/doubtful_place.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <vector>

namespace pithward {

/// Every place of a dated reading where one ring more or less could be: each candidate that was turned down, with its
/// confidence; each boundary, with what its confidence lacks; and each ring's inner boundary as a place at which the
/// tree may have laid none, with a small probability (0.001, assumed), since nothing shows it. A boundary that a person
/// looked at is false with 0.002 at most (assumed). Rings without a year are left out. `series` is what `measure` makes
/// of the reading. Fails where a place is on no leg.
[[nodiscard]] Outcome<std::vector<DoubtfulPlace>> doubtful_places(const Reading& reading, const RingSeries& series);

} // namespace pithward
