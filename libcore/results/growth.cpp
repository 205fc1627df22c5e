#include "libcore/results/growth.h"

#include <algorithm>
#include <map>

namespace pithward::results {

namespace {

struct GrowthSum {
    double mm = 0.0;
    double mm2 = 0.0;
    int widths = 0;
    int areas = 0;
};

/// Adds a core's rings, each at its year less `zero`.
void add_rings(std::map<int, GrowthSum>& sums, const GrowthCore& core, int zero) {
    for (std::size_t k = 0; k < core.series.rings.size(); ++k) {
        const Ring& ring = core.series.rings[k];
        if (!ring.year || !ring.width) {
            continue;
        }
        GrowthSum& sum = sums[ring.year->value() - zero];
        sum.mm += ring.width->value();
        ++sum.widths;
        if (k < core.basal_area.size() && core.basal_area[k]) {
            sum.mm2 += core.basal_area[k]->mm2;
            ++sum.areas;
        }
    }
}

std::vector<MeanGrowth> means_of(const std::map<int, GrowthSum>& sums) {
    std::vector<MeanGrowth> means;
    means.reserve(sums.size());
    for (const auto& [at, sum] : sums) {
        means.push_back({at, sum.mm / sum.widths, sum.widths,
                         sum.areas > 0 ? std::optional(sum.mm2 / sum.areas) : std::nullopt, sum.areas});
    }
    return means;
}

int multiple_below(int year, int length) {
    const int rest = year % length;
    return year - (rest < 0 ? rest + length : rest);
}

} // namespace

std::vector<MeanGrowth> growth_by_year(std::span<const GrowthCore> cores) {
    std::map<int, GrowthSum> sums;
    for (const GrowthCore& core : cores) {
        add_rings(sums, core, 0);
    }
    return means_of(sums);
}

std::vector<MeanGrowth> growth_by_age(std::span<const GrowthCore> cores) {
    std::map<int, GrowthSum> sums;
    for (const GrowthCore& core : cores) {
        if (core.pith) {
            add_rings(sums, core, core.pith->value() - 1);
        }
    }
    return means_of(sums);
}

std::vector<YearCount> year_histogram(std::span<const int> years, int length) {
    std::vector<YearCount> counts;
    if (years.empty() || length < 1) {
        return counts;
    }
    const auto [least, greatest] = std::ranges::minmax_element(years);
    const int end = multiple_below(*greatest, length);
    for (int from = multiple_below(*least, length); from <= end; from += length) {
        const auto within = [&](int year) { return year >= from && year < from + length; };
        counts.push_back({from, from + length - 1, static_cast<int>(std::ranges::count_if(years, within))});
    }
    return counts;
}

} // namespace pithward::results
