#pragma once

#include "libcore/specimen/edit.h"
#include "libcore/specimen/outcome.h"

#include <optional>
#include <span>
#include <string>

namespace pithward::review {

// The way of a reading from proposed to passed (design, section 3), each step an edit, and refused where it does not
// fit. The person's name is an entry, not a lock.

/// Says of a proposed or returned reading that its analyst is done with it. Findings may still be open: the second
/// person may settle them.
[[nodiscard]] Outcome<Edit> mark(const Reading& reading, const std::string& who);

/// What a second person says of one finding of a marked or returned reading. Passed: it was settled rightly; an open
/// one can't pass. Returned: it is open again, and the reading goes back to its analyst. A comment replaces the one
/// before, which the history keeps; an empty one leaves it.
[[nodiscard]] Outcome<Edit> judge(const Reading& reading, FindingId id, Verdict verdict, const std::string& comment);

/// The refusal of who marked a reading and would pass it, or a finding of it; nothing for anybody else.
[[nodiscard]] std::optional<Fault> fault_of_own_work(const Reading& reading, std::span<const EditRecord> log,
                                                     const std::string& who);

/// Sends a marked or passed reading back to its analyst.
[[nodiscard]] Outcome<Edit> send_back(const Reading& reading);

/// Whether who marked a reading may pass it too. Exports tell when that was done.
enum class OwnWork { Refused, Allowed };

/// Passes a marked reading, with the findings that nobody has judged yet. Refused with an open or returned finding.
/// `log` tells who marked it.
[[nodiscard]] Outcome<Edit> pass(const Reading& reading, std::span<const EditRecord> log, const std::string& who,
                                 OwnWork own_work = OwnWork::Refused);

} // namespace pithward::review
