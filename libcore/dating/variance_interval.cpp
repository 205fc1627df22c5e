#include "libcore/dating/variance_interval.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

namespace pithward::dating {

namespace {

constexpr int times = 200;
constexpr int fewest = 5;

/// Sums of correlations between trees, and within them on the diagonal.
struct TreeSums {
    Eigen::ArrayXXd r;
    Eigen::ArrayXXd pairs;
};

TreeSums sums_of(const PairCorrelations& pairs, const std::vector<int>& trees) {
    const int n = *std::ranges::max_element(trees) + 1;
    TreeSums sums{Eigen::ArrayXXd::Zero(n, n), Eigen::ArrayXXd::Zero(n, n)};
    for (Eigen::Index i = 0; i < pairs.r.cols(); ++i) {
        for (Eigen::Index j = 0; j < i; ++j) {
            if (!std::isnan(pairs.r(i, j))) {
                const int a = std::max(trees[i], trees[j]);
                const int b = std::min(trees[i], trees[j]);
                sums.r(a, b) += pairs.r(i, j);
                sums.pairs(a, b) += 1.0;
            }
        }
    }
    return sums;
}

/// Trees that have a pair with any other.
std::vector<int> heard(const TreeSums& sums) {
    std::vector<int> result;
    for (int t = 0; t < sums.pairs.rows(); ++t) {
        if (sums.pairs.row(t).sum() + sums.pairs.col(t).sum() > sums.pairs(t, t) + sums.pairs(t, t)) {
            result.push_back(t);
        }
    }
    return result;
}

/// What these trees say together; the same tree twice is no pair.
std::optional<double> effective_of(const TreeSums& sums, const std::vector<int>& drawn, double one_over_cores) {
    double between = 0.0;
    double pairs = 0.0;
    double within = 0.0;
    double cores = 0.0;
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        within += sums.r(drawn[i], drawn[i]);
        cores += sums.pairs(drawn[i], drawn[i]);
        for (std::size_t j = 0; j < i; ++j) {
            const int a = std::max(drawn[i], drawn[j]);
            const int b = std::min(drawn[i], drawn[j]);
            between += a == b ? 0.0 : sums.r(a, b);
            pairs += a == b ? 0.0 : sums.pairs(a, b);
        }
    }
    if (pairs == 0.0) {
        return std::nullopt;
    }
    return effective_correlation(between / pairs, cores > 0.0 ? std::optional(within / cores) : std::nullopt,
                                 one_over_cores);
}

} // namespace

double effective_correlation(double between, const std::optional<double>& within, double one_over_cores) {
    if (!within) {
        return between;
    }
    const double cores = *within + (1.0 - *within) * one_over_cores;
    return cores > 0.0 ? std::min(1.0, between / cores) : between;
}

double population_signal(double trees, double r) {
    const double held = std::max(0.0, r);
    const double all = trees * held + 1.0 - held;
    return all > 0.0 ? trees * held / all : 0.0;
}

void add_intervals(CommonVariance& variance, const PairCorrelations& pairs, const std::vector<int>& trees,
                   double one_over_cores) {
    if (trees.empty() || !variance.effective) {
        return;
    }
    const TreeSums sums = sums_of(pairs, trees);
    const std::vector<int> all = heard(sums);
    if (all.size() < static_cast<std::size_t>(fewest)) {
        return;
    }
    std::mt19937_64 generator(20240611);
    std::vector<double> correlations;
    correlations.reserve(times);
    std::vector<int> drawn(all.size());
    for (int k = 0; k < times; ++k) {
        std::ranges::generate(drawn, [&] { return all[generator() % all.size()]; });
        if (const auto r = effective_of(sums, drawn, one_over_cores)) {
            correlations.push_back(*r);
        }
    }
    if (correlations.size() < times / 2) {
        return;
    }
    std::ranges::sort(correlations);
    const std::size_t cut = correlations.size() / 20;
    variance.effective_low = correlations[cut];
    variance.effective_high = correlations[correlations.size() - 1 - cut];
    // EPS rises with r, so its interval has the same ends.
    variance.eps_low = population_signal(variance.trees, *variance.effective_low);
    variance.eps_high = population_signal(variance.trees, *variance.effective_high);
}

} // namespace pithward::dating
