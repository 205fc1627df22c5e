#pragma once

#include "libcore/dating/site_table.h"

#include <optional>
#include <vector>

namespace pithward::dating {

/// What the series of a site have in common. Correlations are means over pairs with at least 30 years in common.
struct CommonVariance {
    std::optional<double> r_bar;   ///< All pairs.
    std::optional<double> within;  ///< Pairs of one tree.
    std::optional<double> between; ///< Pairs of different trees.
    /// Correlation of trees: between / (within + (1 - within) / cores), cores the harmonic mean of cores a tree (Briffa
    /// and Jones 1990, in Methods of Dendrochronology; from memory). Without two cores of any tree, `between`.
    std::optional<double> effective;
    double trees = 0.0; ///< Mean number of trees over the years.
    /// Expressed population signal: trees r / (trees r + 1 - r), r the effective correlation, at least 0 (Wigley,
    /// Briffa and Jones 1984, Journal of Climate and Applied Meteorology 23).
    std::optional<double> eps;
    std::optional<double> signal_to_noise; ///< trees r / (1 - r) (same source).
    /// 90 % intervals of the effective correlation and of EPS: trees, with all their cores, are drawn anew with
    /// replacement 200 times from a fixed seed (Efron 1979). Nothing for fewer than five trees.
    std::optional<double> effective_low;
    std::optional<double> effective_high;
    std::optional<double> eps_low;
    std::optional<double> eps_high;
};

/// Of indices.
[[nodiscard]] CommonVariance common_variance(const SiteTable& indices, int least_overlap = 30);

/// The least EPS at which a chronology is usually said to stand for its site (common practice of the trade, after the
/// same source).
inline constexpr double usual_least_eps = 0.85;

/// The same over windows.
struct WindowVariance {
    int from = 0;
    int to = 0;
    CommonVariance variance;
};
[[nodiscard]] std::vector<WindowVariance> running_variance(const SiteTable& indices, int length = 50, int step = 25);

/// Mean sensitivity of widths: the mean of |2 (w_i - w_(i-1)) / (w_i + w_(i-1))| (Douglass 1936; Fritts 1976). Two
/// rings of 0 don't differ. Nothing for fewer than two rings.
[[nodiscard]] std::optional<double> mean_sensitivity(const Eigen::ArrayXd& widths);

/// First-order autocorrelation; nothing for constant values.
[[nodiscard]] std::optional<double> first_autocorrelation(const Eigen::ArrayXd& values);

} // namespace pithward::dating
