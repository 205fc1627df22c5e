#include "libcore/dating/autoregression.h"

#include <algorithm>
#include <cmath>

namespace pithward::dating {

namespace {

/// Sums of products at each lag, by n; empty for nothing to speak of.
Eigen::ArrayXd autocovariance(const Eigen::ArrayXd& values, int most) {
    const int n = count(values);
    const Eigen::ArrayXd deviations =
        (values - mean(values)).unaryExpr([](double v) { return std::isnan(v) ? 0.0 : v; });
    const double square = n > 0 ? deviations.square().sum() : 0.0;
    const double size = n > 0 ? std::abs(mean(values)) : 0.0;
    if (n < 2 || square <= 1e-24 * n * size * size) {
        return {};
    }
    Eigen::ArrayXd result(most + 1);
    for (int lag = 0; lag <= most; ++lag) {
        const Eigen::Index length = std::max<Eigen::Index>(0, values.size() - lag);
        result(lag) = (deviations.head(length) * deviations.tail(length)).sum() / n;
    }
    return result;
}

} // namespace

Eigen::ArrayXd autocorrelation(const Eigen::ArrayXd& values, int most) {
    Eigen::ArrayXd result = autocovariance(values, most);
    if (result.size() > 0) {
        result /= result(0);
    }
    return result;
}

Autoregression fit_autoregression(const Eigen::ArrayXd& values, std::optional<int> order) {
    Autoregression model;
    const int n = count(values);
    model.mean = n > 0 ? mean(values) : 0.0;
    const int usual = n > 1 ? static_cast<int>(std::floor(10.0 * std::log10(n))) : 0;
    const int most = std::clamp(order.value_or(usual), 0, std::max(0, n - 1));
    const Eigen::ArrayXd covariance = autocovariance(values, most);
    if (covariance.size() == 0) {
        return model;
    }
    double variance = covariance(0);
    std::vector<double> coefficients;
    std::vector<std::vector<double>> all;
    double least = std::numeric_limits<double>::infinity();
    for (int p = 0; p <= most; ++p) {
        if (p > 0) {
            double partial = covariance(p);
            for (int k = 1; k < p; ++k) {
                partial -= coefficients[k - 1] * covariance(p - k);
            }
            partial /= variance;
            std::vector<double> next = coefficients;
            for (int k = 1; k < p; ++k) {
                next[k - 1] -= partial * coefficients[p - k - 1];
            }
            next.push_back(partial);
            coefficients = std::move(next);
            variance *= 1.0 - partial * partial;
            if (!(variance > 0.0)) {
                break;
            }
        }
        all.push_back(coefficients);
        model.aic.push_back(n * std::log(variance) + 2.0 * p + 2.0);
        const bool best = order ? p == most : model.aic.back() < least;
        if (best) {
            least = model.aic.back();
            model.coefficients = coefficients;
            model.variance = variance * n / std::max(1, n - (p + 1));
        }
    }
    model.lower.assign(all.begin(), all.begin() + model.order());
    return model;
}

Eigen::ArrayXd innovations(const Eigen::ArrayXd& values, const Autoregression& model) {
    Eigen::ArrayXd result = values;
    int before = 0; // Values in a row just before this one.
    for (Eigen::Index i = 0; i < values.size(); ++i) {
        if (std::isnan(values(i))) {
            before = 0;
            continue;
        }
        const auto& foretell = before < model.order() ? model.lower[before] : model.coefficients;
        for (std::size_t k = 0; k < foretell.size(); ++k) {
            result(i) -= foretell[k] * (values(i - 1 - static_cast<Eigen::Index>(k)) - model.mean);
        }
        ++before;
    }
    return result;
}

} // namespace pithward::dating
