#include "libcore/dating/exponential.h"

#include "libcore/dating/year_series.h"

#include <cmath>
#include <vector>

namespace pithward::dating {

namespace {

/// The best a and k for one b, and how far the curve then is from the values.
struct Fit {
    double rate = 0.0;
    double height = 0.0;
    double floor = 0.0;
    double distance = 0.0;
};

struct Points {
    std::vector<double> time;
    std::vector<double> value;
};

Fit fit_at(const Points& points, double rate) {
    const auto n = static_cast<double>(points.time.size());
    double e = 0.0;
    double ee = 0.0;
    double y = 0.0;
    double ey = 0.0;
    double yy = 0.0;
    for (std::size_t i = 0; i < points.time.size(); ++i) {
        const double x = std::exp(-rate * points.time[i]);
        e += x;
        ee += x * x;
        y += points.value[i];
        ey += x * points.value[i];
        yy += points.value[i] * points.value[i];
    }
    Fit fit;
    fit.rate = rate;
    const double spread = ee - e * e / n;
    fit.height = spread > 0.0 ? (ey - e * y / n) / spread : 0.0;
    fit.floor = (y - fit.height * e) / n;
    fit.distance = yy - 2.0 * (fit.height * ey + fit.floor * y) + fit.height * fit.height * ee +
                   2.0 * fit.height * fit.floor * e + n * fit.floor * fit.floor;
    return fit;
}

Fit golden_section(const Points& points, double low, double high) {
    constexpr double ratio = 0.6180339887498949;
    constexpr int steps = 60;
    double a = high - ratio * (high - low);
    double b = low + ratio * (high - low);
    for (int k = 0; k < steps; ++k) {
        if (fit_at(points, std::exp(a)).distance < fit_at(points, std::exp(b)).distance) {
            high = b;
        } else {
            low = a;
        }
        a = high - ratio * (high - low);
        b = low + ratio * (high - low);
    }
    return fit_at(points, std::exp(0.5 * (low + high)));
}

} // namespace

std::optional<Eigen::ArrayXd> falling_exponential(const Eigen::ArrayXd& values) {
    Points points;
    for (Eigen::Index i = 0; i < values.size(); ++i) {
        if (!std::isnan(values(i))) {
            points.time.push_back(static_cast<double>(i));
            points.value.push_back(values(i));
        }
    }
    constexpr std::size_t fewest = 5;
    if (points.time.size() < fewest) {
        return std::nullopt;
    }
    constexpr int steps = 40;
    const double slowest = std::log(0.1 / static_cast<double>(values.size()));
    const double width = -slowest / steps;
    int best = 0;
    double least = std::numeric_limits<double>::infinity();
    for (int k = 0; k <= steps; ++k) {
        const double distance = fit_at(points, std::exp(slowest + k * width)).distance;
        if (distance < least) {
            least = distance;
            best = k;
        }
    }
    if (best == 0 || best == steps) {
        return std::nullopt;
    }
    const Fit fit = golden_section(points, slowest + (best - 1) * width, slowest + (best + 1) * width);
    if (!(fit.height > 0.0 && fit.floor >= 0.0)) {
        return std::nullopt;
    }
    Eigen::ArrayXd curve(values.size());
    for (Eigen::Index i = 0; i < values.size(); ++i) {
        curve(i) = std::isnan(values(i)) ? none : fit.height * std::exp(-fit.rate * static_cast<double>(i)) + fit.floor;
    }
    return curve;
}

} // namespace pithward::dating
