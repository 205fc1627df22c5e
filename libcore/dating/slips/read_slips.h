#pragma once

#include "libcore/dating/slips/alignment.h"
#include "libcore/dating/slips/slip.h"

#include <vector>

namespace pithward::dating {

/// The slips that an alignment speaks for, from the bark inward: one wherever the most probable shift changes from a
/// ring to the next. `first_ring_year` is the nominal year of the series' oldest ring.
///
/// Each has the expected number of slips of its kind between the middles of the stretches on both sides as its
/// probability (at most 1), and the year that is the best answer: see `worthiest` in read_slips.cpp. Slips under
/// `least_probability` are left out.
[[nodiscard]] std::vector<Slip> read_slips(const Alignment& alignment, int first_ring_year,
                                           double least_probability = 0.5);

/// The shift of a series' outermost ring, where it is more probable than none: all of it is dated so many years off.
[[nodiscard]] int outer_shift(const Alignment& alignment);

} // namespace pithward::dating
