#include "app/review/reading_shelf.h"

#include "libcore/review/queue.h"

#include <algorithm>

namespace pithward::bench {

namespace {

std::vector<QueueItem> items_of(const Reading& reading, const std::vector<review::Waiting>& waiting) {
    std::vector<QueueItem> items;
    items.reserve(waiting.size());
    for (const review::Waiting& one : waiting) {
        const Finding& finding = *std::ranges::find(reading.findings, one.finding, &Finding::id);
        QueueItem item{reading.id,    finding.id,      reading.core,    finding.kind,
                       finding.state, finding.verdict, finding.comment, one.rings_at_stake};
        items.push_back(std::move(item));
    }
    return items;
}

bool can_be_passed(const Reading& reading) {
    return reading.state == Reading::State::Marked && std::ranges::all_of(reading.findings, [](const Finding& one) {
               return one.state != Finding::State::Open && one.verdict == Verdict::Passed;
           });
}

ReadingShelf::Seen seen_now(const Reading& reading, std::int64_t revision) {
    ReadingShelf::Seen seen;
    seen.revision = revision;
    seen.for_second_person = items_of(reading, review::supervisors_queue(std::span(&reading, 1)));
    seen.for_analyst = items_of(reading, review::analysts_list(std::span(&reading, 1)));
    if (can_be_passed(reading)) {
        seen.to_be_passed = QueueItem{.reading = reading.id, .finding = {}, .core = reading.core, .comment = {}};
    }
    return seen;
}

} // namespace

Outcome<std::vector<const ReadingShelf::Seen*>> ReadingShelf::readings(const record::Project& project,
                                                                       std::span<const std::string> states) {
    const auto entries = project.readings();
    if (!entries) {
        return tl::unexpected(entries.error());
    }
    std::vector<const Seen*> wanted;
    for (const record::ReadingEntry& entry : *entries) {
        if (std::ranges::find(states, entry.state) == states.end()) {
            continue;
        }
        auto seen = seen_.find(entry.id);
        if (seen == seen_.end() || seen->second.revision != entry.revision) {
            const auto reading = project.reading(entry.id);
            if (!reading) {
                return tl::unexpected(reading.error());
            }
            seen = seen_.insert_or_assign(entry.id, seen_now(*reading, entry.revision)).first;
        }
        wanted.push_back(&seen->second);
    }
    return wanted;
}

} // namespace pithward::bench
