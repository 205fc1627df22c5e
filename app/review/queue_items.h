#pragma once

#include "app/review/reading_shelf.h"

#include <vector>

namespace pithward::bench {

/// Whom a list is for.
enum class Waits { SecondPerson, Analyst };

/// True when both are the same thing, whatever is said of it.
[[nodiscard]] bool same_item(const QueueItem& a, const QueueItem& b);

/// What waits in the whole project, the worst first; for the second person, the readings that can be passed come last.
[[nodiscard]] Outcome<std::vector<QueueItem>> read_queue(const record::Project& project, ReadingShelf& shelf,
                                                         Waits whom);

} // namespace pithward::bench
