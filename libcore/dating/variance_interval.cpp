#include "libcore/dating/variance_interval.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

namespace pithward::dating {

namespace {

constexpr int times = 200;
constexpr int fewest = 5;

/// Sums of correlations: between trees under the diagonal, and within each.
struct TreeSums {
    Eigen::MatrixXd r;
    Eigen::MatrixXd pairs;
    Eigen::VectorXd within;
    Eigen::VectorXd pairs_within;
};

TreeSums sums_of(const PairCorrelations& pairs, const std::vector<int>& trees) {
    const int n = *std::ranges::max_element(trees) + 1;
    TreeSums sums{Eigen::MatrixXd::Zero(n, n), Eigen::MatrixXd::Zero(n, n), Eigen::VectorXd::Zero(n),
                  Eigen::VectorXd::Zero(n)};
    for (Eigen::Index i = 0; i < pairs.r.cols(); ++i) {
        for (Eigen::Index j = 0; j < i; ++j) {
            const double r = pairs.r(i, j);
            if (std::isnan(r)) {
                continue;
            }
            const int a = std::max(trees[i], trees[j]);
            const int b = std::min(trees[i], trees[j]);
            (a == b ? sums.within(a) : sums.r(a, b)) += r;
            (a == b ? sums.pairs_within(a) : sums.pairs(a, b)) += 1.0;
        }
    }
    return sums;
}

/// Trees that have a pair with any other.
std::vector<int> heard(const TreeSums& sums) {
    std::vector<int> result;
    for (int t = 0; t < sums.pairs.rows(); ++t) {
        if (sums.pairs.row(t).sum() + sums.pairs.col(t).sum() > 0.0) {
            result.push_back(t);
        }
    }
    return result;
}

/// How often each tree (row) is drawn, each time (column).
Eigen::MatrixXd draws_of(const std::vector<int>& all, Eigen::Index trees) {
    std::mt19937_64 generator(20240611);
    Eigen::MatrixXd drawn = Eigen::MatrixXd::Zero(trees, times);
    for (int k = 0; k < times; ++k) {
        for (std::size_t i = 0; i < all.size(); ++i) {
            drawn(all[generator() % all.size()], k) += 1.0;
        }
    }
    return drawn;
}

/// What the trees of each draw say together, in order of height; the same tree twice is no pair. So a pair of trees
/// counts as often as one was drawn times as often as the other was: two matrix products for all draws.
std::vector<double> correlations_of(const TreeSums& sums, const Eigen::MatrixXd& drawn, double one_over_cores) {
    const Eigen::MatrixXd r = sums.r * drawn;
    const Eigen::MatrixXd pairs = sums.pairs * drawn;
    std::vector<double> result;
    result.reserve(times);
    for (int k = 0; k < times; ++k) {
        const double all = drawn.col(k).dot(pairs.col(k));
        if (all > 0.0) {
            const double cores = drawn.col(k).dot(sums.pairs_within);
            result.push_back(effective_correlation(
                drawn.col(k).dot(r.col(k)) / all,
                cores > 0.0 ? std::optional(drawn.col(k).dot(sums.within) / cores) : std::nullopt, one_over_cores));
        }
    }
    std::ranges::sort(result);
    return result;
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
    const std::vector<double> correlations = correlations_of(sums, draws_of(all, sums.r.rows()), one_over_cores);
    if (correlations.size() < times / 2) {
        return;
    }
    const std::size_t cut = correlations.size() / 20;
    variance.effective_low = correlations[cut];
    variance.effective_high = correlations[correlations.size() - 1 - cut];
    // EPS rises with r, so its interval has the same ends.
    variance.eps_low = population_signal(variance.trees, *variance.effective_low);
    variance.eps_high = population_signal(variance.trees, *variance.effective_high);
}

} // namespace pithward::dating
