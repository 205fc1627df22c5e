#pragma once

#include "libcore/dating/pairs.h"
#include "libcore/dating/site_statistics.h"

#include <optional>

namespace pithward::dating {

/// The correlation of trees from that of series within and between them: between / (within + (1 - within)
/// one_over_cores). At most 1; `between` where nothing is known within.
[[nodiscard]] double effective_correlation(double between, const std::optional<double>& within, double one_over_cores);

/// trees r / (trees r + 1 - r), r at least 0.
[[nodiscard]] double population_signal(double trees, double r);

/// Sets the intervals of `variance`, which holds what all trees say.
void add_intervals(CommonVariance& variance, const PairCorrelations& pairs, const std::vector<int>& trees,
                   double one_over_cores);

} // namespace pithward::dating
