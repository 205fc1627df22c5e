#pragma once

#include "libcore/specimen/edit.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"

#include <cstdint>
#include <string>

namespace pithward {

/// Settles a finding as a person decides, with a comment if wanted; State::Open opens it again.
///
/// ProposalTaken also does what the finding proposes, in the same edit, and numbers what it adds from `fresh_id`
/// (Document::fresh_id()): a proposed boundary comes in, looked at, and the candidate in its place goes; a boundary
/// that is to go becomes a candidate turned down. KeptAsItIs and CannotBeTold confirm as looked at the boundary that
/// the finding is about. A proposal of words alone changes nothing but the finding, and so does one that is done
/// already. A verdict that a second person gave no longer holds.
[[nodiscard]] Outcome<Edit> settle_finding(const Reading& reading, FindingId id, Finding::State state,
                                           std::string comment, std::int64_t fresh_id);

/// Notes a finding, under this id. One that the reading has already, by the finding's own id, becomes this one instead.
[[nodiscard]] Edit note_finding(const Reading& reading, Finding finding, FindingId fresh);

/// Notes a finding and settles it in the same edit, so that what was decided elsewhere goes through review like all
/// else.
[[nodiscard]] Outcome<Edit> settle_as(const Reading& reading, Finding finding, Finding::State state,
                                      std::int64_t fresh_id);

} // namespace pithward
