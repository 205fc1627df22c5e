#include "app/review/reading_shelf.h"

#include <algorithm>

namespace pithward::bench {

Outcome<std::vector<Reading>> ReadingShelf::readings(const record::Project& project,
                                                     std::span<const std::string> states) {
    const auto entries = project.readings();
    if (!entries) {
        return tl::unexpected(entries.error());
    }
    std::vector<Reading> wanted;
    for (const record::ReadingEntry& entry : *entries) {
        if (std::ranges::find(states, entry.state) == states.end()) {
            continue;
        }
        const auto seen = seen_.find(entry.id);
        if (seen == seen_.end() || seen->second.first != entry.revision) {
            auto reading = project.reading(entry.id);
            if (!reading) {
                return tl::unexpected(std::move(reading.error()));
            }
            seen_[entry.id] = {entry.revision, std::move(*reading)};
        }
        wanted.push_back(seen_[entry.id].second);
    }
    return wanted;
}

} // namespace pithward::bench
