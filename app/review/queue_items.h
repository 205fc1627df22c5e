#pragma once

#include "app/review/reading_shelf.h"
#include "libcore/specimen/reading.h"

#include <optional>
#include <string>
#include <vector>

namespace pithward::bench {

/// Whom a list is for.
enum class Waits { SecondPerson, Analyst };

/// Something that waits: a finding, or a reading that is to be passed as a whole.
struct QueueItem {
    ReadingId reading;
    std::optional<FindingId> finding; ///< Nothing: every finding of the reading is judged, and it can be passed.
    std::string core;
    FindingKind kind = FindingKind::Doubtful;
    Finding::State state = Finding::State::Open;
    Verdict verdict = Verdict::None;
    std::string comment;
    double rings_at_stake = 0.0;
};

/// True when both are the same thing, whatever is said of it.
[[nodiscard]] bool same_item(const QueueItem& a, const QueueItem& b);

/// What waits in the whole project, the worst first; for the second person, the readings that can be passed come last.
[[nodiscard]] Outcome<std::vector<QueueItem>> read_queue(const record::Project& project, ReadingShelf& shelf,
                                                         Waits whom);

} // namespace pithward::bench
