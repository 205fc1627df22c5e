#include "libcore/dating/site_statistics.h"

#include "libcore/dating/autoregression.h"
#include "libcore/dating/pairs.h"
#include "libcore/dating/variance_interval.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <vector>

namespace pithward::dating {

namespace {

/// A mean in the making.
struct Mean {
    double sum = 0.0;
    int n = 0;
    void add(double value) {
        sum += value;
        ++n;
    }
    [[nodiscard]] std::optional<double> value() const { return n == 0 ? std::nullopt : std::optional(sum / n); }
};

/// Trees with a value in a year, in the mean over the years that have any.
double mean_trees(const SiteTable& table) {
    Mean trees;
    if (table.trees.empty()) {
        return 0.0;
    }
    std::vector<int> last_seen(*std::ranges::max_element(table.trees) + 1, -1); // The year in which a tree was.
    for (int y = 0; y < table.years(); ++y) {
        int here = 0;
        for (int i = 0; i < table.series(); ++i) {
            if (!std::isnan(table.values(y, i)) && last_seen[table.trees[i]] != y) {
                last_seen[table.trees[i]] = y;
                ++here;
            }
        }
        if (here > 0) {
            trees.add(here);
        }
    }
    return trees.value().value_or(0.0);
}

/// One over the cores of a tree, in the mean over the trees.
double mean_of_one_over_cores(const SiteTable& table) {
    std::map<int, int> cores;
    for (int i = 0; i < table.series(); ++i) {
        cores[table.trees[i]] += count(table.values.col(i)) > 0 ? 1 : 0;
    }
    Mean mean;
    for (const auto& [tree, n] : cores) {
        if (n > 0) {
            mean.add(1.0 / n);
        }
    }
    return mean.value().value_or(1.0);
}

} // namespace

CommonVariance common_variance(const SiteTable& indices, int least_overlap) {
    const PairCorrelations pairs = pair_correlations(indices, least_overlap);
    Mean all;
    Mean within;
    Mean between;
    for (int i = 0; i < indices.series(); ++i) {
        for (int j = 0; j < i; ++j) {
            if (!std::isnan(pairs.r(i, j))) {
                all.add(pairs.r(i, j));
                (indices.trees[i] == indices.trees[j] ? within : between).add(pairs.r(i, j));
            }
        }
    }
    CommonVariance result;
    result.r_bar = all.value();
    result.within = within.value();
    result.between = between.value();
    result.trees = mean_trees(indices);
    if (!result.between) {
        return result;
    }
    const double one_over_cores = mean_of_one_over_cores(indices);
    result.effective = effective_correlation(*result.between, result.within, one_over_cores);
    const double r = std::max(0.0, *result.effective);
    result.eps = population_signal(result.trees, r);
    if (r < 1.0) {
        result.signal_to_noise = result.trees * r / (1.0 - r);
    }
    add_intervals(result, pairs, indices.trees, one_over_cores);
    return result;
}

std::vector<WindowVariance> running_variance(const SiteTable& indices, int length, int step) {
    std::vector<WindowVariance> result;
    for (int end = indices.years(); end >= length; end -= std::max(1, step)) {
        SiteTable window{indices.first_year + end - length, indices.values.middleRows(end - length, length),
                         indices.trees};
        result.push_back(
            {window.first_year, window.first_year + length - 1, common_variance(window, std::min(30, 3 * length / 5))});
    }
    std::ranges::reverse(result);
    return result;
}

std::optional<double> mean_sensitivity(const Eigen::ArrayXd& widths) {
    Mean changes;
    for (Eigen::Index i = 1; i < widths.size(); ++i) {
        const double sum = widths(i) + widths(i - 1);
        if (!std::isnan(sum)) {
            changes.add(sum > 0.0 ? 2.0 * std::abs(widths(i) - widths(i - 1)) / sum : 0.0);
        }
    }
    return changes.value();
}

std::optional<double> first_autocorrelation(const Eigen::ArrayXd& values) {
    const Eigen::ArrayXd all = autocorrelation(values, 1);
    return all.size() > 1 ? std::optional(all(1)) : std::nullopt;
}

} // namespace pithward::dating
