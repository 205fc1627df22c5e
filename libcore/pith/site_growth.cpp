#include "libcore/pith/site_growth.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace pithward::pith {

namespace {

constexpr std::size_t least_site_widths = 10;
constexpr std::size_t most_site_widths = 30;
constexpr double assumed_cores = 4.0;
constexpr double least_trend_sd = 0.005;
constexpr double most_persistence = 0.8;

/// The line through the logarithms of one core's widths.
struct CoreTrend {
    double inward = 0.0;     ///< Change of ln(width) from one ring to the next one inward.
    double variance = 0.0;   ///< Of that.
    double scatter2 = 0.0;   ///< Variance of single rings about the line.
    double neighbours = 0.0; ///< Their correlation.
    double level = 0.0;      ///< Mean of ln(width).
};

std::optional<CoreTrend> trend_of(const std::vector<double>& widths_mm) {
    const std::size_t count = std::min(most_site_widths, widths_mm.size());
    if (count < least_site_widths) {
        return std::nullopt;
    }
    const auto n = static_cast<double>(count);
    const double middle = 0.5 * (n - 1.0);
    double mean = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        mean += std::log(widths_mm[i]) / n;
    }
    double xx = 0.0;
    double xy = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        const double x = static_cast<double>(i) - middle;
        xx += x * x;
        xy += x * (std::log(widths_mm[i]) - mean);
    }
    const double outward = xy / xx;
    double square = 0.0;
    double product = 0.0;
    double before = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        const double off = std::log(widths_mm[i]) - mean - outward * (static_cast<double>(i) - middle);
        square += off * off;
        product += i > 0 ? off * before : 0.0;
        before = off;
    }
    CoreTrend trend;
    trend.inward = -outward;
    trend.level = mean;
    trend.scatter2 = square / (n - 2.0);
    trend.neighbours = square > 0.0 ? std::clamp(product / square, 0.0, most_persistence) : 0.0;
    // Neighbours that are alike tell less of a trend than as many that are not.
    trend.variance = trend.scatter2 / xx * (1.0 + trend.neighbours) / (1.0 - trend.neighbours);
    return trend;
}

} // namespace

GrowthBeforehand growth_of_site(std::span<const std::vector<double>> widths_mm) {
    const GrowthBeforehand assumed;
    std::vector<CoreTrend> trends;
    trends.reserve(widths_mm.size());
    double trend = assumed_cores * assumed.trend;
    double scatter2 = assumed_cores * assumed.scatter * assumed.scatter;
    double neighbours = assumed_cores * assumed.persistence;
    double level = assumed_cores * std::log(assumed.usual_mm);
    for (const std::vector<double>& widths : widths_mm) {
        if (const auto of_core = trend_of(widths)) {
            trends.push_back(*of_core);
            trend += of_core->inward;
            scatter2 += of_core->scatter2;
            neighbours += of_core->neighbours;
            level += of_core->level;
        }
    }
    const double weight = assumed_cores + static_cast<double>(trends.size());
    GrowthBeforehand growth;
    growth.trend = trend / weight;
    growth.scatter = std::sqrt(scatter2 / weight);
    growth.persistence = neighbours / weight;
    growth.usual_mm = std::exp(level / weight);
    double between = assumed_cores * assumed.trend_sd * assumed.trend_sd;
    for (const CoreTrend& one : trends) {
        const double off = one.inward - growth.trend;
        between += off * off - one.variance;
    }
    growth.trend_sd = std::sqrt(std::max(least_trend_sd * least_trend_sd, between / weight));
    return growth;
}

} // namespace pithward::pith
