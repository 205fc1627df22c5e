#include "libcore/dating/trend.h"

#include "libcore/dating/exponential.h"
#include "libcore/dating/smoothing_spline.h"

#include <array>
#include <cmath>
#include <utility>

namespace pithward::dating {

namespace {

constexpr std::array words{
    std::pair{TrendKind::Mean, std::string_view("mean")},
    std::pair{TrendKind::Line, std::string_view("line")},
    std::pair{TrendKind::Exponential, std::string_view("exponential")},
    std::pair{TrendKind::Spline, std::string_view("spline")},
};

/// A curve without the years that have no value.
Eigen::ArrayXd where_there(const Eigen::ArrayXd& values, Eigen::ArrayXd curve) {
    for (Eigen::Index i = 0; i < values.size(); ++i) {
        curve(i) = std::isnan(values(i)) ? none : curve(i);
    }
    return curve;
}

bool positive(const Eigen::ArrayXd& curve) {
    for (const double value : curve) {
        if (value <= 0.0) { // False for no value.
            return false;
        }
    }
    return true;
}

Trend mean_of(const Eigen::ArrayXd& values, std::string remark) {
    return {where_there(values, Eigen::ArrayXd::Constant(values.size(), mean(values))), TrendKind::Mean,
            std::move(remark)};
}

/// The line, if it is allowed; else the mean. `remark` says why a line was taken at all.
Trend line_or_mean(const Eigen::ArrayXd& values, const std::string& remark, bool must_be_positive, bool must_fall) {
    const Eigen::ArrayXd time = where_there(values, Eigen::ArrayXd::LinSpaced(values.size(), 0.0, 1.0));
    const double middle = mean(time);
    const double height = mean(values);
    const double spread = mean((time - middle).square());
    const double slope = spread > 0.0 ? mean((time - middle) * (values - height)) / spread : 0.0;
    const Eigen::ArrayXd line = height + slope * (time - middle);
    const std::string so_far = remark.empty() ? "" : remark + ", and ";
    if (must_fall && slope >= 0.0) {
        return mean_of(values, so_far + "a line would not fall: the mean is taken");
    }
    if (must_be_positive && !positive(line)) {
        return mean_of(values, so_far + "a line would not stay positive: the mean is taken");
    }
    return {line, TrendKind::Line, remark.empty() ? "" : remark + ": a line is taken"};
}

} // namespace

std::string_view word_of(TrendKind kind) {
    for (const auto& [known, word] : words) {
        if (known == kind) {
            return word;
        }
    }
    return {};
}

std::optional<TrendKind> trend_kind_from(std::string_view word) {
    for (const auto& [kind, known] : words) {
        if (known == word) {
            return kind;
        }
    }
    return std::nullopt;
}

Trend fit_trend(const Eigen::ArrayXd& values, TrendKind kind, double period, bool must_be_positive) {
    switch (kind) {
    case TrendKind::Mean:
        break;
    case TrendKind::Line:
        return line_or_mean(values, "", must_be_positive, false);
    case TrendKind::Exponential:
        if (const auto curve = falling_exponential(values); curve && (!must_be_positive || positive(*curve))) {
            return {*curve, TrendKind::Exponential, ""};
        }
        return line_or_mean(values, "no falling exponential fits", must_be_positive, true);
    case TrendKind::Spline:
        if (const Eigen::ArrayXd curve = smoothing_spline(values, period); !must_be_positive || positive(curve)) {
            return {curve, TrendKind::Spline, ""};
        }
        return line_or_mean(values, "the spline would not stay positive", must_be_positive, false);
    }
    return mean_of(values, "");
}

} // namespace pithward::dating
