#pragma once

#include "libcore/specimen/site.h"

#include <optional>

namespace pithward::dating {

/// The months in which trees of a site grow, 1 to 12, both included. `first` is greater than `last` where the season
/// goes on over the turn of the year, as it does south of the equator.
struct GrowingSeason {
    int first = 4;
    int last = 9;

    [[nodiscard]] bool has(int month) const;
    /// The year of the last ring that was complete in a month of a year; a ring bears the year in which its growth
    /// began. Before and within the season of year Y that is Y - 1, after it Y. Exact where the months are.
    [[nodiscard]] Year last_complete_ring(int year, int month) const;
    friend bool operator==(const GrowingSeason&, const GrowingSeason&) = default;
};

/// The season that the field sheet sets for the site, in its columns `season_from` and `season_to` (months, 1 to 12).
/// Nothing where they are not there or are no months.
[[nodiscard]] std::optional<GrowingSeason> season_set(const Core& core);

/// That, else April to September north of the equator and October to March south of it (assumed). Nothing without
/// latitude, and between the tropics, where seasons need not follow the sun.
[[nodiscard]] std::optional<GrowingSeason> season_of(const Site& site, const Core& core);

/// Year and month of coring, as far as the field sheet has them.
[[nodiscard]] std::optional<int> year_cored(const Core& core);
[[nodiscard]] std::optional<int> month_cored(const Core& core);

/// Latitude of the tropics in degrees: the tilt of the earth's axis.
inline constexpr double tropic_deg = 23.44;

} // namespace pithward::dating
