#include "app/review/queue_items.h"

#include <algorithm>

namespace pithward::bench {

bool same_item(const QueueItem& a, const QueueItem& b) {
    return a.reading == b.reading && a.finding == b.finding;
}

Outcome<std::vector<QueueItem>> read_queue(const record::Project& project, ReadingShelf& shelf, Waits whom) {
    static const std::vector<std::string> second{"marked", "returned"};
    static const std::vector<std::string> first{"proposed", "returned"};
    const bool for_second = whom == Waits::SecondPerson;
    return shelf.readings(project, for_second ? second : first)
        .map([for_second](const std::vector<const ReadingShelf::Seen*>& readings) {
            std::vector<QueueItem> items;
            for (const ReadingShelf::Seen* seen : readings) {
                const auto& waiting = for_second ? seen->for_second_person : seen->for_analyst;
                items.insert(items.end(), waiting.begin(), waiting.end());
            }
            // As libcore/review has them for each reading.
            std::ranges::stable_sort(items, [for_second](const QueueItem& a, const QueueItem& b) {
                const bool returned = a.verdict == Verdict::Returned;
                if (!for_second && returned != (b.verdict == Verdict::Returned)) {
                    return returned;
                }
                return a.rings_at_stake > b.rings_at_stake;
            });
            for (const ReadingShelf::Seen* seen : readings) {
                if (for_second && seen->to_be_passed) {
                    items.push_back(*seen->to_be_passed);
                }
            }
            return items;
        });
}

} // namespace pithward::bench
