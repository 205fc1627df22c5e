#pragma once

#include "libcore/specimen/edit.h"
#include "libcore/specimen/outcome.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace pithward {

// The log of one reading's edits is a list of records, oldest first, with growing ids; none is ever taken out of it.
// Undo adds a record that names the one it takes back, and redo a record that names the undo. So a record is in effect
// as long as no later one names it, and what a person can undo or redo follows from the log alone.

/// The edits in effect, in the order in which they were made first: what was taken back and not brought back is left
/// out, and so are the records that did that. Pointers into `log`.
[[nodiscard]] std::vector<const EditRecord*> edits_in_effect(std::span<const EditRecord> log);

/// What this person can take back next: their latest edit in effect. Undo goes back edit by edit without limit; edits
/// that were undone before and left so are passed over.
[[nodiscard]] std::optional<EditId> next_to_undo(std::span<const EditRecord> log, std::string_view who);

/// What this person can bring back next: the undo record to name. A new edit of theirs after an undo ends its redo, as
/// people expect.
[[nodiscard]] std::optional<EditId> next_to_redo(std::span<const EditRecord> log, std::string_view who);

/// The edit that takes back a record of the log. Refused if the record is not there or was taken back already, and if a
/// later edit that is in effect touches something that it touches: that one has to go first.
[[nodiscard]] Outcome<Edit> taking_back(std::span<const EditRecord> log, EditId record);

/// What an edit does, in words: a group's label, else such as "Add a ring boundary".
[[nodiscard]] std::string label_of(const Edit& edit);

/// The words for a record in a history: its edit's, or "Undo: ..." and "Redo: ...".
[[nodiscard]] std::string label_of(std::span<const EditRecord> log, const EditRecord& record);

} // namespace pithward
