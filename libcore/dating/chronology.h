#pragma once

#include "libcore/dating/index_series.h"
#include "libcore/dating/site_statistics.h"
#include "libcore/dating/site_table.h"
#include "libcore/specimen/work.h"

#include <string>
#include <vector>

namespace pithward::dating {

/// A year of a site chronology.
struct ChronologyYear {
    int year = 0;
    std::optional<double> value; ///< Biweight mean of the indices; nothing where no series has one.
    int series = 0;              ///< With a value.
    int trees = 0;
    std::optional<double> low; ///< 90 % interval by the bootstrap over trees; nothing for fewer than three trees.
    std::optional<double> high;
};

/// A year in which most trees grew much more or much less than in the years before.
struct PointerYear {
    int year = 0;
    bool wide = false;
    double share = 0.0; ///< Of the series.
    int series = 0;
};

struct Chronology {
    std::vector<ChronologyYear> years; ///< Without gaps, oldest first.
    CommonVariance variance;
    std::vector<WindowVariance> running;
    std::vector<PointerYear> pointer_years;
    std::vector<std::string> remarks;
};

/// The mean of the detrended series of a site. The bootstrap draws trees with replacement, 500 times, from a fixed seed
/// (Efron 1979): the same on every machine.
[[nodiscard]] Chronology chronology(const std::vector<TreeSeries>& site, const IndexOptions& options,
                                    const Work& work = {});

/// Years in which at least 80 % of at least ten series have a width that is over 10 % more (or all less) than the mean
/// of the four years before it (relative change of growth after Schweingruber et al. 1990, Dendrochronologia 8, from
/// memory; the thresholds are ours).
[[nodiscard]] std::vector<PointerYear> pointer_years(const SiteTable& widths);

} // namespace pithward::dating
