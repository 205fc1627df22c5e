#pragma once

#include "libcore/dating/site_table.h"
#include "libcore/dating/slips/alignment.h"
#include "libcore/dating/slips/slip.h"
#include "libcore/specimen/work.h"

#include <vector>

namespace pithward::dating {

/// How slips are sought.
struct SlipOptions {
    SlipPrior prior;
    double period = 25.0; ///< Of the spline that is taken off the logarithms of the widths, in years.
    int rounds = 3;       ///< Each round holds a series against the others as the last round has repaired them.
    double least_probability = 0.5; ///< Of a slip that is told, by the rates of `prior`.
    /// How much rarer slips are than `prior` says, where a probability is stated. The search takes them for common, so
    /// as to miss few; decoys tell what that costs (docs/accuracy.md): jumps that nobody makes are then told as often
    /// as if the odds were five to eight times too high. A fifth gives 8 slips in 100,000 rings, one series in sixty.
    double stated_odds = 0.2;
};

/// What the others say of the dates of one series.
struct SeriesSlips {
    std::vector<Slip> slips; ///< From the bark inward.
    Alignment alignment;
    int whole_shift = 0; ///< Years to add to all of the series: its outer end is dated wrong.
};

/// Looks for slips in every series of a site.
///
/// Each series is aligned with the growth that all others have in common. Then each is put right as its most
/// probable alignment says (rings that are not sure of their shift are left out), counts by its agreement with the
/// others, and all are aligned anew. So a misdated series hardly misleads the others, however the site began.
[[nodiscard]] std::vector<SeriesSlips> find_slips(const std::vector<TreeSeries>& site, const SlipOptions& options,
                                                  const Work& work = {});

/// Looks for slips in every series of a site by what other series, held to be dated rightly, have in common.
[[nodiscard]] std::vector<SeriesSlips> find_slips_against(const std::vector<TreeSeries>& reference,
                                                          const std::vector<TreeSeries>& site,
                                                          const SlipOptions& options, const Work& work = {});

} // namespace pithward::dating
