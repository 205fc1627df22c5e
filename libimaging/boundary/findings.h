#pragma once

#include "libcore/specimen/reading.h"
#include "libimaging/boundary/outer_end.h"
#include "libimaging/boundary/sequence.h"
#include "libimaging/boundary/wood/judge_wood.h"

#include <cstddef>
#include <vector>

namespace pithward::boundary {

/// The rings between a proposed reading's boundaries, from the bark.
struct ProposedRings {
    std::vector<double> width_mm;    ///< Less the breaks within.
    std::vector<std::size_t> broken; ///< For each break of the reading the ring that it lies in.
};

/// Sets the flags of a reading's boundaries: what informs and asks for no answer.
void add_flags(Reading& reading, const std::vector<double>& width_mm);

/// What asks for an answer in a proposed reading: doubtful boundaries, places of one that may be overlooked, wide
/// breaks, breaks that may hide a boundary, runs of rings of a few pixels, the judged outer wood, a doubtful bark end
/// or kind of wood. Numbers the findings from 1.
void add_findings(Reading& reading, const ProposedRings& rings, const OuterEnd& outer, bool outer_given,
                  const WoodJudgement& wood);

/// Boundaries of less confidence than this are flagged as faint.
inline constexpr double sure = 0.8;

} // namespace pithward::boundary
