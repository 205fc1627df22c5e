#pragma once

#include "libcore/record/project.h"
#include "libcore/specimen/reading.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace pithward::bench {

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

/// What waits in the readings of a project as they were last seen, so that a look at it reads only what has changed
/// since. Used in the store's thread.
class ReadingShelf {
public:
    struct Seen {
        std::int64_t revision = 0;
        std::vector<QueueItem> for_second_person;
        std::vector<QueueItem> for_analyst;
        std::optional<QueueItem> to_be_passed; ///< The reading as a whole.
    };

    /// The readings in some of the states ("marked", ...), as the project has them now; good until the next call.
    [[nodiscard]] Outcome<std::vector<const Seen*>> readings(const record::Project& project,
                                                             std::span<const std::string> states);

private:
    std::map<ReadingId, Seen> seen_;
};

} // namespace pithward::bench
