#include "libcore/dating/robust_mean.h"

#include "libcore/dating/year_series.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace pithward::dating {

namespace {

struct Biweight {
    double mean = none;
    double reach = 0.0; ///< Beyond this distance from the mean nothing counts.
    bool plain = false; ///< An arithmetic mean.

    [[nodiscard]] double weight(double value) const {
        if (std::isnan(value)) {
            return 0.0;
        }
        if (plain) {
            return 1.0;
        }
        if (reach == 0.0) {
            return value == mean ? 1.0 : 0.0;
        }
        const double u = (value - mean) / reach;
        return std::abs(u) < 1.0 ? (1.0 - u * u) * (1.0 - u * u) : 0.0;
    }
};

Biweight biweight(const Eigen::ArrayXd& values) {
    constexpr int fewest = 3;
    constexpr double deviations = 9.0;
    constexpr int most_steps = 50;
    if (count(values) < fewest) {
        return {mean(values), 0.0, true};
    }
    Biweight result;
    result.mean = median(values);
    result.reach = deviations * median((values - result.mean).abs());
    for (int step = 0; step < most_steps && result.reach > 0.0; ++step) {
        double sum = 0.0;
        double weights = 0.0;
        for (const double value : values) {
            const double weight = result.weight(value);
            sum += weight > 0.0 ? weight * value : 0.0;
            weights += weight;
        }
        const double next = sum / weights;
        const bool still = std::abs(next - result.mean) <= 1e-12 * result.reach;
        result.mean = next;
        if (still) {
            break;
        }
    }
    return result;
}

} // namespace

double median(const Eigen::ArrayXd& values) {
    std::vector<double> there;
    there.reserve(static_cast<std::size_t>(values.size()));
    std::copy_if(values.begin(), values.end(), std::back_inserter(there), [](double v) { return !std::isnan(v); });
    if (there.empty()) {
        return none;
    }
    const auto middle = there.begin() + static_cast<std::ptrdiff_t>(there.size() / 2);
    std::nth_element(there.begin(), middle, there.end());
    if (there.size() % 2 == 1) {
        return *middle;
    }
    return 0.5 * (*middle + *std::max_element(there.begin(), middle));
}

double biweight_mean(const Eigen::ArrayXd& values) {
    return biweight(values).mean;
}

Eigen::ArrayXd biweight_weights(const Eigen::ArrayXd& values) {
    const Biweight result = biweight(values);
    return values.unaryExpr([&](double value) { return result.weight(value); });
}

} // namespace pithward::dating
