#include "libcore/dating/year_series.h"

#include <algorithm>
#include <cmath>

namespace pithward::dating {

YearSeries widths_of(const WidthSeries& series) {
    const auto& widths = series.widths;
    const auto there = [](const std::optional<Millimetres>& width) { return width.has_value(); };
    const auto begin = std::ranges::find_if(widths, there);
    const auto end = std::find_if(widths.rbegin(), std::make_reverse_iterator(begin), there).base();
    YearSeries result;
    result.first_year = series.first_year.value() + static_cast<int>(begin - widths.begin());
    result.values.resize(end - begin);
    std::transform(begin, end, result.values.begin(), [](const auto& width) { return width ? width->value() : none; });
    return result;
}

YearSeries log_widths(const YearSeries& widths) {
    double narrowest = std::numeric_limits<double>::infinity();
    for (const double width : widths.values) {
        if (width > 0.0) {
            narrowest = std::min(narrowest, width);
        }
    }
    const double absent = std::isfinite(narrowest) ? 0.5 * narrowest : 1.0;
    YearSeries logs = widths;
    for (double& value : logs.values) {
        value = std::isnan(value) ? none : std::log(value > 0.0 ? value : absent);
    }
    return logs;
}

int count(const Eigen::ArrayXd& values) {
    return static_cast<int>(std::count_if(values.begin(), values.end(), [](double v) { return !std::isnan(v); }));
}

double mean(const Eigen::ArrayXd& values) {
    double sum = 0.0;
    int n = 0;
    for (const double value : values) {
        if (!std::isnan(value)) {
            sum += value;
            ++n;
        }
    }
    return n == 0 ? none : sum / n;
}

double deviation(const Eigen::ArrayXd& values) {
    const double middle = mean(values);
    double sum = 0.0;
    int n = 0;
    for (const double value : values) {
        if (!std::isnan(value)) {
            sum += (value - middle) * (value - middle);
            ++n;
        }
    }
    return n < 2 ? none : std::sqrt(sum / (n - 1));
}

YearSeries in_deviations(const YearSeries& series, const YearSeries& other) {
    Eigen::ArrayXd shared = series.values;
    for (int k = 0; k < series.size(); ++k) {
        shared(k) = std::isnan(other.at(series.first_year + k)) ? none : series.values(k);
    }
    const double size = deviation(shared);
    const bool varies = size > 1e-9;
    return {series.first_year, varies ? Eigen::ArrayXd((series.values - mean(shared)) / size)
                                      : Eigen::ArrayXd::Constant(series.size(), none)};
}

} // namespace pithward::dating
