#pragma once

#include "libcore/specimen/edit.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"

#include <optional>

namespace pithward {

/// The reading after an edit. All of the edit is done or none of it, however many parts it has.
///
/// Refused, with a reason for a person, is an edit
/// - whose old value is not what the reading holds (somebody changed it since), or whose object is not there;
/// - that adds an object under an id that is taken, or under none;
/// - that moves a ring boundary past its neighbour, or bends the path so that boundaries change their order;
/// - that leaves something hanging: a boundary on a leg that the path does not have, a locally absent ring at a
/// boundary
///   that is gone, legs joined at what is not there;
/// - with a place or a measure that is no finite number.
///
/// Lists stay in order: boundaries, candidates and breaks from bark to pith, the others by their ids. So
/// apply(apply(r, e), inverse(e)) == r for every reading that is `readied`.
[[nodiscard]] Outcome<Reading> apply(Reading reading, const Edit& edit);

/// The edit that takes this one back. It needs no reading, since an edit holds old and new values.
[[nodiscard]] Edit inverse(const Edit& edit);

/// Whether an edit leaves every reading as it was, such as an empty group. The log drops those.
[[nodiscard]] bool changes_nothing(const Edit& edit);

/// A reading made fit for edits: objects that have no id of their own get one, lists are put in order. Fails where
/// something hangs (see above). Whatever comes from the program's proposals or from a file passes through here once.
[[nodiscard]] Outcome<Reading> readied(Reading reading);

/// The first thing that hangs in a reading; nothing in a sound one.
[[nodiscard]] std::optional<Fault> fault_of_links(const Reading& reading);

} // namespace pithward
