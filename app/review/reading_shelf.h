#pragma once

#include "libcore/record/project.h"
#include "libcore/review/queue.h"

#include <map>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace pithward::bench {

/// The readings of a project as they were last seen, so that a look at what waits reads only what has changed since.
/// Used in the store's thread.
class ReadingShelf {
public:
    /// The readings in some of the states ("marked", ...), as the project has them now.
    [[nodiscard]] Outcome<std::vector<Reading>> readings(const record::Project& project,
                                                         std::span<const std::string> states);

private:
    std::map<ReadingId, std::pair<std::int64_t, Reading>> seen_; ///< With the revision.
};

} // namespace pithward::bench
