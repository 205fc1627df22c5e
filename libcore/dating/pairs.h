#pragma once

#include "libcore/dating/site_table.h"
#include "libcore/specimen/work.h"

#include <Eigen/Core>

namespace pithward::dating {

/// The correlation of each pair at their given years: series x series, NaN where the overlap is shorter or a series is
/// constant there; the diagonal too.
struct PairCorrelations {
    Eigen::ArrayXXd r;
    Eigen::ArrayXXi overlap;
};
[[nodiscard]] PairCorrelations pair_correlations(const SiteTable& table, int least_overlap);

/// The best of all shifts of each pair, by t: what has to be added to the years of the row's series to fit the
/// column's. The overlap is 0 where no shift has enough years in common.
struct PairMatches {
    Eigen::ArrayXXi shift;
    Eigen::ArrayXXi overlap;
    Eigen::ArrayXXd r;
    Eigen::ArrayXXi positions; ///< Shifts looked at.
};

/// Every pair at every shift. A matrix product a shift; sums over the overlap come from running sums where no series
/// has a gap, else from more products.
[[nodiscard]] PairMatches every_pair_at_every_shift(const SiteTable& table, int least_overlap, const Work& work = {});

} // namespace pithward::dating
