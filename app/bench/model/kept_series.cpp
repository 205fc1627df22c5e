#include "app/bench/model/kept_series.h"

#include <algorithm>

namespace pithward::bench {

namespace {

bool dated(const RingSeries& series) {
    return !series.rings.empty() && series.rings.front().year.has_value();
}

} // namespace

Companions companions(const std::vector<KeptSeries>& kept, const KeptSeries& present) {
    Companions found;
    for (const KeptSeries& other : kept) {
        if (other.reading == present.reading || other.site != present.site || !dated(*other.series)) {
            continue;
        }
        found.mean.push_back(other.series.get());
        if (other.tree == present.tree) {
            found.drawn.push_back(other.series.get());
        }
    }
    return found;
}

const KeptSeries* kept_of(const std::vector<KeptSeries>& kept, ReadingId reading, const std::string& core) {
    const auto by_number = std::ranges::find(kept, reading, &KeptSeries::reading);
    if (by_number != kept.end()) {
        return &*by_number;
    }
    const auto by_name = std::ranges::find(kept, core, &KeptSeries::core);
    return by_name != kept.end() && std::ranges::count(kept, core, &KeptSeries::core) == 1 ? &*by_name : nullptr;
}

} // namespace pithward::bench
