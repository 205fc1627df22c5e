#include "tests/record/power_cut.h"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <vector>

namespace pithward::test {

namespace {

using EventKind = DiskEvent::Kind;

constexpr std::size_t sector_bytes = 512;

bool by_chance(std::mt19937& random) {
    return random() % 2 == 0;
}

void grow(std::string& bytes, std::size_t size) {
    bytes.resize(std::max(bytes.size(), size), '\0');
}

void do_whole(std::string& bytes, const DiskEvent& event) {
    const auto at = static_cast<std::size_t>(event.at);
    if (event.kind == EventKind::Truncate) {
        bytes.resize(at, '\0');
        return;
    }
    grow(bytes, at + event.bytes.size());
    std::ranges::copy(event.bytes, bytes.begin() + event.at);
}

void do_torn(std::string& bytes, const DiskEvent& event, std::mt19937& random) {
    if (event.kind == EventKind::Truncate) {
        do_whole(bytes, event);
        return;
    }
    const auto at = static_cast<std::size_t>(event.at);
    const std::size_t end = at + event.bytes.size();
    const std::size_t old_end = bytes.size();
    for (std::size_t from = at; from < end;) {
        const std::size_t to = std::min(end, (from / sector_bytes + 1) * sector_bytes);
        const bool kept = by_chance(random);
        const bool noise = !kept && from >= old_end && by_chance(random);
        if (kept || noise) {
            grow(bytes, to);
        }
        for (std::size_t i = from; (kept || noise) && i < to; ++i) {
            bytes[i] = kept ? event.bytes[i - at] : static_cast<char>(random());
        }
        from = to;
    }
}

/// A file from its creation on: what is on the disk for sure, and what was done since.
struct Contents {
    std::string synced;
    std::vector<const DiskEvent*> since;

    void sync() {
        for (const DiskEvent* event : since) {
            do_whole(synced, *event);
        }
        since.clear();
    }

    [[nodiscard]] std::string after(Unsynced unsynced, std::mt19937& random) const {
        std::string bytes = synced;
        const std::size_t count = unsynced == Unsynced::Lost     ? 0
                                  : unsynced == Unsynced::Prefix ? random() % (since.size() + 1)
                                                                 : since.size();
        for (std::size_t i = 0; i < count; ++i) {
            if (unsynced == Unsynced::Torn) {
                do_torn(bytes, *since[i], random);
            } else if (unsynced != Unsynced::Some || by_chance(random)) {
                do_whole(bytes, *since[i]);
            }
        }
        return bytes;
    }
};

/// A name in the folder: what stands there for sure, then what it was made to be since, by the number of the contents;
/// nothing where there is no such file.
using Name = std::vector<std::optional<std::size_t>>;

} // namespace

Files after_power_cut(const Files& before, std::span<const DiskEvent> events, Unsynced unsynced, std::mt19937& random,
                      bool disk_lies) {
    std::vector<Contents> all;
    std::map<std::string, Name> names;
    for (const auto& [name, bytes] : before) {
        names[name] = {all.size()};
        all.push_back({bytes, {}});
    }
    const auto now = [&](const std::string& name) {
        const auto found = names.find(name);
        return found == names.end() ? std::nullopt : found->second.back();
    };
    for (const DiskEvent& event : events) {
        const auto number = now(event.file);
        if (event.kind == EventKind::Create) {
            Name& name = names.try_emplace(event.file, Name{std::nullopt}).first->second;
            name.emplace_back(all.size());
            all.push_back({});
        } else if (event.kind == EventKind::Delete) {
            if (number) {
                names[event.file].push_back(std::nullopt);
            }
        } else if (event.kind == EventKind::SyncFolder) {
            for (auto& [file, name] : names) {
                if (!disk_lies) {
                    name = {name.back()};
                }
            }
        } else if (number && event.kind == EventKind::Sync) {
            if (!disk_lies) {
                all[*number].sync();
            }
        } else if (number) {
            all[*number].since.push_back(&event);
        }
    }
    Files left;
    for (const auto& [file, name] : names) {
        const std::size_t chosen = unsynced == Unsynced::Lost   ? 0
                                   : unsynced == Unsynced::Kept ? name.size() - 1
                                                                : random() % name.size();
        if (const auto number = name[chosen]) {
            left[file] = all[*number].after(unsynced, random);
        }
    }
    return left;
}

} // namespace pithward::test
