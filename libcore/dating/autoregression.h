#pragma once

#include "libcore/dating/year_series.h"

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace pithward::dating {

/// Autocorrelation of what is there at the lags 0 to `most`, with the covariances divided by n at every lag (as in Box
/// and Jenkins 1970). Empty for constant values or fewer than two.
[[nodiscard]] Eigen::ArrayXd autocorrelation(const Eigen::ArrayXd& values, int most);

/// A model of a value by those before it.
struct Autoregression {
    std::vector<double> coefficients; ///< Of the value one year before, two years before, ...
    /// The same of each lower order, from 0: what fewer years before tell best.
    std::vector<std::vector<double>> lower;
    double mean = 0.0;
    double variance = 0.0;   ///< Of what is left: n / (n - order - 1) times the recursion's.
    std::vector<double> aic; ///< By order, from 0.

    [[nodiscard]] int order() const { return static_cast<int>(coefficients.size()); }
};

/// Fits by the Yule-Walker equations (Levinson's and Durbin's recursion), of the order up to 10 log10 n (or as given)
/// with the least AIC = n ln(variance) + 2 order (Akaike 1974). Order 0 for constant values.
[[nodiscard]] Autoregression fit_autoregression(const Eigen::ArrayXd& values, std::optional<int> order = std::nullopt);

/// What the values before don't foretell, plus the mean. The first values, and those after a gap, are foretold by as
/// many as there are before them, so no year is lost.
[[nodiscard]] Eigen::ArrayXd innovations(const Eigen::ArrayXd& values, const Autoregression& model);

} // namespace pithward::dating
