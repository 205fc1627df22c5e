#pragma once

#include "libcore/dating/shifts.h"
#include "libcore/dating/site_table.h"
#include "libcore/specimen/work.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace pithward::dating {

/// How two series of a site go with each other.
struct PairResult {
    std::size_t first = 0; ///< Of the site's series.
    std::size_t second = 0;
    int overlap = 0;         ///< Years in common as both are dated.
    std::optional<double> r; ///< As both are dated; nothing for fewer than `least_pair_overlap` years in common.
    double t = 0.0;
    /// The best of all shifts: what has to be added to the years of the first to fit the second. Nothing where no shift
    /// has enough years in common.
    std::optional<RankedMatch> best;
    int positions = 0; ///< Shifts looked at.
};

inline constexpr int least_pair_overlap = 30;

/// Every pair of series at every shift with at least `least_pair_overlap` years in common, in order of the series.
/// `indices` holds what is compared. Chances are those of `every_shift`.
[[nodiscard]] std::vector<PairResult> pair_results(const SiteTable& indices, const Work& work = {});

} // namespace pithward::dating
