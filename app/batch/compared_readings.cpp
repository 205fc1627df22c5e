#include "app/batch/compared_readings.h"

#include "libcore/formats/reading_json.h"
#include "libcore/measure/measure.h"

#include <algorithm>

namespace pithward::batch {

namespace {

/// Nothing where the reading can't be measured.
Outcome<std::optional<MeasuredReading>> measured(const record::Project& project, ReadingId id) {
    auto reading = project.reading(id);
    if (!reading) {
        return tl::unexpected(std::move(reading.error()));
    }
    auto series = measure(*reading);
    return series ? std::optional(MeasuredReading{std::move(*reading), std::move(*series)}) : std::nullopt;
}

std::vector<PlacedBoundary> places_of(const std::vector<BoundaryId>& ids, const RingSeries& series) {
    std::vector<PlacedBoundary> places;
    places.reserve(ids.size());
    for (const PlacedBoundary& placed : series.boundaries) {
        if (std::ranges::find(ids, placed.id) != ids.end()) {
            places.push_back(placed);
        }
    }
    return places;
}

} // namespace

Outcome<std::vector<record::ReadingComparison>> compared_readings(const record::Project& project,
                                                                  std::span<const record::CoreEntry> cores,
                                                                  std::span<const record::ReadingEntry> readings) {
    std::vector<record::ReadingComparison> all;
    for (const record::CoreEntry& core : cores) {
        std::optional<MeasuredReading> accepted;
        for (const record::ReadingEntry& entry : readings) {
            if (entry.core != core.id || !core.accepted || entry.id == *core.accepted) {
                continue;
            }
            if (!accepted) {
                auto read = measured(project, *core.accepted);
                if (!read) {
                    return tl::unexpected(std::move(read.error()));
                }
                if (!*read) {
                    break;
                }
                accepted = std::move(*read);
            }
            const auto other = measured(project, entry.id);
            if (!other) {
                return tl::unexpected(other.error());
            }
            if (!*other) {
                continue;
            }
            auto both = review::compare({accepted->reading, accepted->series}, {(*other)->reading, (*other)->series});
            if (both) {
                auto first = places_of(both->only_first, accepted->series);
                auto second = places_of(both->only_second, (*other)->series);
                all.push_back(
                    {core.id, *core.accepted, entry.id, std::move(*both), std::move(first), std::move(second)});
            }
        }
    }
    return all;
}

} // namespace pithward::batch
