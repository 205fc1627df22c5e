#pragma once

#include "libcore/pith/rings_to_pith.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"
#include "libcore/specimen/work.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace pithward {

/// What is known beside the scan.
struct PithKnowledge {
    std::optional<Millimetres> stem_radius; ///< Of the wood, from the field sheet (pith/published.h).
    pith::GrowthBeforehand growth;
};

/// The pith of a reading; nothing where it can't be told, and then a finding says why. That one asks for no answer: it
/// is settled as what can't be told.
struct PithJudgement {
    std::optional<Pith> pith;
    std::vector<Finding> findings; ///< Not numbered.
};

/// Judges where the pith of a finished reading lies and how many rings are missing to it, from the curves of the
/// innermost boundaries (pith/pith_posterior.h, pith/rings_to_pith.h). Published methods are computed beside it; where
/// one disagrees beyond both intervals, that is a finding. No number is made up of two or fewer boundaries, flat arcs,
/// arcs that bend the wrong way or both ways, or a centre beyond the stem. A pith that was placed by hand or seen on
/// the core keeps its place; the curves are another method beside it then. `series` is what measuring the reading gave.
[[nodiscard]] PithJudgement judge_pith(const Reading& reading, const RingSeries& series,
                                       const PithKnowledge& knowledge = {}, const Work& work = {});

/// The reading with a judgement of its pith: sets `pith`, drops the findings of that kind that hold no longer and
/// that nobody has answered, and adds and numbers new ones, from `fresh` on where it is given; what was settled before
/// is not raised again.
[[nodiscard]] Reading with_judgement(Reading reading, PithJudgement judgement,
                                     std::optional<std::int64_t> fresh = std::nullopt);

/// The reading with its pith judged anew. Measure again afterwards where the pith is on the core: the innermost ring
/// has a width then.
[[nodiscard]] Reading with_pith(Reading reading, const RingSeries& series, const PithKnowledge& knowledge = {},
                                const Work& work = {});

} // namespace pithward
