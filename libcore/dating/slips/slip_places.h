#pragma once

#include "libcore/dating/slips/alignment.h"
#include "libcore/dating/slips/slip.h"
#include "libcore/specimen/doubtful_place.h"

#include <span>
#include <vector>

namespace pithward::dating {

/// A place on the scan where a slip may lie.
struct SlipPlace {
    DoubtfulPlace place;
    int ring_year = 0;        ///< Of the ring to put in or to take out, as `Slip::ring_year`, if it is this place.
    double probability = 0.0; ///< That the slip is there and its change right.
};

/// Whether a place in this year may be that of a slip: in its 90 % range, or at most 8 years beside it (assumed).
[[nodiscard]] bool looked_at_for(const Slip& slip, int year);

/// What a slip adds to the years of all rings inside it, to date them rightly.
[[nodiscard]] int shift_inside(const Slip& slip);

/// Joins what the other cores say of each slip with what the wood shows: for each slip the likeliest places, best
/// first, at most `most`.
///
/// By Bayes' rule, given that one of the places is a slip, each has the weight e o / sum: e the number of slips of this
/// kind that the alignment expects in its year, o = p / (1 - p) the odds of the wood. Looked at are the years of the
/// slip's 90 % range and some on both sides (`looked_at_for`). The others are told by the alignment alone from dates,
/// the wood's odds from the picture alone, so both count in full.
[[nodiscard]] std::vector<std::vector<SlipPlace>> slip_places(std::span<const Slip> slips, const Alignment& alignment,
                                                              int whole_shift, std::span<const DoubtfulPlace> places,
                                                              std::size_t most = 3);

} // namespace pithward::dating
