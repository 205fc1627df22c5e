#include "libcore/dating/slips/ring_variation.h"

#include "libcore/dating/smoothing_spline.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace pithward::dating {

namespace {

constexpr double deviations_of_median = 0.6745; ///< Median of |x| for a normal x of variance 1.
constexpr int half_window = 15;
constexpr double rings_of_whole = 10.0;
constexpr std::size_t fewest_innovations = 10;

double median_size(const Eigen::ArrayXd& values) {
    std::vector<double> sizes;
    for (const double value : values) {
        if (!std::isnan(value)) {
            sizes.push_back(std::abs(value));
        }
    }
    if (sizes.size() < fewest_innovations) {
        return none;
    }
    const auto middle = sizes.begin() + static_cast<std::ptrdiff_t>(sizes.size() / 2);
    std::nth_element(sizes.begin(), middle, sizes.end());
    return *middle;
}

/// Holds values to so many robust deviations; a series without variation becomes none.
bool hold(Eigen::ArrayXd& values, double deviations) {
    const double limit = deviations * median_size(values) / deviations_of_median;
    if (!(limit > 1e-6)) {
        return false;
    }
    for (double& value : values) {
        value = std::isnan(value) ? value : std::clamp(value, -limit, limit);
    }
    return true;
}

double persistence_of(const Eigen::ArrayXd& values) {
    double products = 0.0;
    double squares = 0.0;
    for (Eigen::Index k = 0; k + 1 < values.size(); ++k) {
        if (!std::isnan(values(k)) && !std::isnan(values(k + 1))) {
            products += values(k) * values(k + 1);
            squares += 0.5 * (values(k) * values(k) + values(k + 1) * values(k + 1));
        }
    }
    return squares > 0.0 ? std::clamp(products / squares, -0.5, 0.8) : 0.0;
}

Eigen::ArrayXd local_scale(const Eigen::ArrayXd& innovations) {
    const auto n = innovations.size();
    const Eigen::ArrayXd squares = innovations.square();
    const double whole = mean(squares);
    Eigen::ArrayXd scale(n);
    for (Eigen::Index k = 0; k < n; ++k) {
        double sum = rings_of_whole * whole;
        double rings = rings_of_whole;
        for (Eigen::Index j = std::max<Eigen::Index>(0, k - half_window); j <= std::min(n - 1, k + half_window); ++j) {
            if (!std::isnan(squares(j))) {
                sum += squares(j);
                rings += 1.0;
            }
        }
        scale(k) = std::sqrt(sum / rings);
    }
    return scale;
}

} // namespace

RingVariation ring_variation(const YearSeries& widths, double period) {
    RingVariation result;
    const YearSeries logs = log_widths(widths);
    const Eigen::ArrayXd trend = smoothing_spline(logs.values, period);
    result.value = {logs.first_year, logs.values - trend};
    if (!hold(result.value.values, 4.0)) {
        return result;
    }
    const Eigen::ArrayXd& value = result.value.values;
    const Eigen::Index n = value.size();
    result.persistence = persistence_of(value);
    Eigen::ArrayXd innovations = Eigen::ArrayXd::Constant(n, none);
    innovations.head(n - 1) = value.head(n - 1) - result.persistence * value.tail(n - 1);
    if (!hold(innovations, 3.0)) {
        return result;
    }
    result.scale = local_scale(innovations);
    result.pair = Eigen::ArrayXd::Constant(n, none);
    result.pair_odds = Eigen::ArrayXd::Zero(n);
    for (Eigen::Index k = 0; k + 1 < n; ++k) {
        if (!std::isnan(value(k)) && !std::isnan(value(k + 1))) {
            const double older = std::exp(value(k) + trend(k));
            const double younger = std::exp(value(k + 1) + trend(k + 1));
            const double sum = older + younger;
            const double shares = older * younger / (sum * sum);
            result.pair(k) = std::log(sum) - 0.5 * (trend(k) + trend(k + 1));
            result.pair_odds(k) = 6.0 * shares * shares;
        }
    }
    return result;
}

} // namespace pithward::dating
