#include "libimaging/calibrate/robust_line.h"

#include "libimaging/robust/median.h"

#include <algorithm>
#include <cmath>

namespace pithward::calibrate {

namespace {

constexpr double biweight = 4.685; ///< 95 % efficient on normal residuals.
constexpr int reweightings = 30;
constexpr double most_correlation = 0.9;

std::vector<double> residuals(const std::vector<LinePoint>& points, const RobustLine& line) {
    std::vector<double> out;
    out.reserve(points.size());
    for (const LinePoint& point : points) {
        out.push_back(point.y - line.at(point.x));
    }
    return out;
}

/// From the middle half of the residuals or from three quarters of them, whichever says more: the median alone is too
/// small by chance in one short ruler of twenty, and good marks would be cast out.
double scatter_of(const std::vector<double>& residual, double least) {
    constexpr double half = 0.6745; // quantiles of a normal residual's size
    constexpr double three_quarters = 1.1503;
    std::vector<double> sizes;
    sizes.reserve(residual.size());
    for (const double r : residual) {
        sizes.push_back(std::abs(r));
    }
    std::ranges::sort(sizes);
    const std::size_t last = sizes.size() - 1;
    return std::max({least, sizes[last / 2] / half, sizes[3 * last / 4] / three_quarters});
}

double tukey_weight(double residual, double scatter) {
    const double u = residual / (biweight * scatter);
    return std::abs(u) < 1.0 ? (1.0 - u * u) * (1.0 - u * u) : 0.0;
}

struct Sums {
    double w = 0.0;
    double x = 0.0;  ///< Weighted mean.
    double y = 0.0;  ///< Weighted mean.
    double xx = 0.0; ///< About the mean.
    double xy = 0.0;
};

Sums sums_of(const std::vector<LinePoint>& points, const std::vector<double>& weights) {
    Sums sums;
    for (std::size_t i = 0; i < points.size(); ++i) {
        sums.w += weights[i];
        sums.x += weights[i] * points[i].x;
        sums.y += weights[i] * points[i].y;
    }
    sums.x /= sums.w;
    sums.y /= sums.w;
    for (std::size_t i = 0; i < points.size(); ++i) {
        sums.xx += weights[i] * (points[i].x - sums.x) * (points[i].x - sums.x);
        sums.xy += weights[i] * (points[i].x - sums.x) * (points[i].y - sums.y);
    }
    return sums;
}

/// Correlation of each good residual with the next.
double neighbours_agree(const std::vector<double>& residual, double scatter) {
    double both = 0.0;
    double power = 1e-30;
    for (std::size_t i = 0; i < residual.size(); ++i) {
        if (tukey_weight(residual[i], scatter) == 0.0) {
            continue;
        }
        power += residual[i] * residual[i];
        if (i > 0 && tukey_weight(residual[i - 1], scatter) > 0.0) {
            both += residual[i] * residual[i - 1];
        }
    }
    return std::clamp(both / power, 0.0, most_correlation);
}

/// Huber's variance of the slope.
double slope_deviation(const std::vector<LinePoint>& points, const std::vector<double>& residual, double scatter) {
    double psi2 = 0.0;
    double slope = 0.0;
    double mean_x = 0.0;
    double inside = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double u = residual[i] / (biweight * scatter);
        if (std::abs(u) >= 1.0) {
            continue;
        }
        const double psi = residual[i] * (1.0 - u * u) * (1.0 - u * u);
        psi2 += psi * psi;
        slope += (1.0 - u * u) * (1.0 - 5.0 * u * u);
        mean_x += points[i].x;
        inside += 1.0;
    }
    mean_x /= inside;
    double xx = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (std::abs(residual[i]) < biweight * scatter) {
            xx += (points[i].x - mean_x) * (points[i].x - mean_x);
        }
    }
    const double per_point = psi2 / std::max(1.0, inside - 2.0) / std::pow(std::max(0.1, slope / inside), 2.0);
    return std::sqrt(per_point / xx);
}

} // namespace

std::optional<RobustLine> fit_line(const std::vector<LinePoint>& points, double first_offset, double first_slope,
                                   double least_scatter) {
    if (points.size() < 4) {
        return std::nullopt;
    }
    RobustLine line{.offset = first_offset, .slope = first_slope};
    line.offset += median(residuals(points, line));
    std::vector<double> weights(points.size());
    for (int round = 0; round < reweightings; ++round) {
        const std::vector<double> residual = residuals(points, line);
        const double scatter = scatter_of(residual, least_scatter);
        std::ranges::transform(residual, weights.begin(), [&](double r) { return tukey_weight(r, scatter); });
        const Sums sums = sums_of(points, weights);
        if (sums.w < 2.0 || sums.xx <= 0.0) {
            return std::nullopt;
        }
        line.slope = sums.xy / sums.xx;
        line.offset = sums.y - line.slope * sums.x;
    }
    const std::vector<double> residual = residuals(points, line);
    const double scatter = scatter_of(residual, least_scatter);
    line.good =
        static_cast<int>(std::ranges::count_if(residual, [&](double r) { return tukey_weight(r, scatter) >= 0.5; }));
    if (line.good < 4) {
        return std::nullopt;
    }
    line.agreement = neighbours_agree(residual, scatter);
    line.scatter = scatter;
    line.slope_sd = std::max(slope_deviation(points, residual, scatter), least_scatter * 1e-6) *
                    std::sqrt((1.0 + line.agreement) / (1.0 - line.agreement));
    return line;
}

} // namespace pithward::calibrate
