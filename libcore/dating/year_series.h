#pragma once

#include "libcore/specimen/width_series.h"

#include <Eigen/Core>

#include <limits>

namespace pithward::dating {

/// Stands for "no value" inside this library. Results that leave it say so by an optional instead.
inline constexpr double none = std::numeric_limits<double>::quiet_NaN();

/// Values by calendar year, oldest first; `none` where a year has no value.
struct YearSeries {
    int first_year = 0;
    Eigen::ArrayXd values;

    [[nodiscard]] int size() const { return static_cast<int>(values.size()); }
    [[nodiscard]] int last_year() const { return first_year + size() - 1; }
    /// The value of a year; `none` outside the series.
    [[nodiscard]] double at(int year) const {
        return year < first_year || year > last_year() ? none : values(year - first_year);
    }
};

/// The widths of a series in mm; a gap becomes `none`, a locally absent ring stays 0. Gaps at both ends are left out.
[[nodiscard]] YearSeries widths_of(const WidthSeries& series);

/// Natural logarithms of widths in mm. A width of 0 (a locally absent ring) counts as half of the narrowest ring of its
/// series: it is told from a measured ring, and stays finite.
[[nodiscard]] YearSeries log_widths(const YearSeries& widths);

/// How many values there are.
[[nodiscard]] int count(const Eigen::ArrayXd& values);
/// The arithmetic mean of what is there; `none` of nothing.
[[nodiscard]] double mean(const Eigen::ArrayXd& values);
/// The standard deviation of what is there, by n - 1; `none` of fewer than two.
[[nodiscard]] double deviation(const Eigen::ArrayXd& values);

/// A series about its mean, in its standard deviations, both over the years that `other` has as well: two series so
/// treated lie on each other where they agree. All `none` where it does not vary there.
[[nodiscard]] YearSeries in_deviations(const YearSeries& series, const YearSeries& other);

} // namespace pithward::dating
