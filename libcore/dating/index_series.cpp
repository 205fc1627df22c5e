#include "libcore/dating/index_series.h"

#include "libcore/dating/autoregression.h"

namespace pithward::dating {

std::string IndexOptions::validate() const {
    constexpr double longest = 10'000.0;
    if (trend == TrendKind::Spline && !(period > 2.0 && period <= longest)) {
        return "the spline's period must be over 2 and at most 10,000 years";
    }
    return {};
}

IndexSeries index_series(const YearSeries& widths, const IndexOptions& options) {
    IndexSeries result;
    result.index = options.logarithm ? log_widths(widths) : widths;
    Eigen::ArrayXd& values = result.index.values;
    if (count(values) == 0) {
        return result;
    }
    const bool divide = !options.logarithm && !options.difference;
    const Trend trend = fit_trend(values, options.trend, options.period, divide);
    result.trend = trend.used;
    result.remark = trend.remark;
    if (!divide) {
        values -= trend.curve;
    } else if (mean(values) > 0.0) { // Else every width is 0.
        values /= trend.curve;
    }
    if (options.prewhiten) {
        const Autoregression model = fit_autoregression(values);
        result.order = model.order();
        values = innovations(values, model);
    }
    return result;
}

} // namespace pithward::dating
