#pragma once

#include "libcore/dating/slips/slip.h"
#include "libcore/dating/slips/slip_places.h"
#include "libcore/specimen/finding.h"

#include <optional>
#include <span>
#include <vector>

namespace pithward::dating {

/// A slip at one of its places as a finding of the reading, open and without an id: what the other cores say and what
/// the wood shows as its reason, the change that would put it right as its proposal.
[[nodiscard]] Finding slip_finding(const Slip& slip, const SlipPlace& place);

/// For each slip the finding that was made of it, or of another of its places, and whose proposal was not taken: the
/// latest one. Nothing for a slip that nobody has noted. A finding belongs to a slip when it is about a ring more, or
/// less, as the slip is, and lies at a place of `wood` that is looked at for it (see `slip_places`).
[[nodiscard]] std::vector<std::optional<FindingId>> findings_of_slips(std::span<const Slip> slips, int whole_shift,
                                                                      std::span<const DoubtfulPlace> wood,
                                                                      std::span<const Finding> findings);

} // namespace pithward::dating
