#pragma once

#include "libcore/dating/year_series.h"

#include <Eigen/Core>

#include <optional>
#include <string>
#include <string_view>

namespace pithward::dating {

/// What is taken for the growth that has to do with the tree's age. A new kind is one value here and one line in the
/// list of trend.cpp.
enum class TrendKind { Mean, Line, Exponential, Spline };

/// As words: "mean", "line", "exponential", "spline".
[[nodiscard]] std::string_view word_of(TrendKind kind);
[[nodiscard]] std::optional<TrendKind> trend_kind_from(std::string_view word);

struct Trend {
    Eigen::ArrayXd curve; ///< NaN where the series has no value.
    TrendKind used = TrendKind::Mean;
    std::string remark; ///< Why it isn't the kind that was asked for; else empty.
};

/// The trend of a series of widths, always more than 0 where `must_be_positive`.
///
/// 1. Mean: the arithmetic mean.
/// 2. Line: least squares; if it isn't positive throughout, the mean.
/// 3. Exponential: a exp(-b t) + k by least squares with a > 0, b > 0 and k >= 0 (Fritts 1976, Tree Rings and Climate;
///    from memory); if there is no such curve, the line if it falls and is positive, else the mean.
/// 4. Spline: see `smoothing_spline`; if it isn't positive throughout, the line, else the mean.
///
/// `period` is the spline's, in years, over 2. Requires at least one value.
[[nodiscard]] Trend fit_trend(const Eigen::ArrayXd& values, TrendKind kind, double period, bool must_be_positive);

} // namespace pithward::dating
