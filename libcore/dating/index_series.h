#pragma once

#include "libcore/dating/trend.h"
#include "libcore/dating/year_series.h"

#include <string>

namespace pithward::dating {

/// How widths become indices that can be compared.
struct IndexOptions {
    TrendKind trend = TrendKind::Spline;
    double period = 32.0;    ///< Of the spline, in years; over 2.
    bool difference = false; ///< Width less trend instead of width by trend.
    bool logarithm = false;  ///< Logarithms less their trend; see `log_widths` for a width of 0.
    bool prewhiten = true;   ///< Take off what the years before foretell (see `fit_autoregression`).

    /// What is wrong with them, in words; empty if nothing is.
    [[nodiscard]] std::string validate() const;
};

/// A series of indices, and what was done to get it.
struct IndexSeries {
    YearSeries index;
    TrendKind trend = TrendKind::Mean;
    int order = 0;      ///< Of the autoregression taken off.
    std::string remark; ///< Why another trend was taken than asked for; else empty.
};

/// The indices of a width series. A width of 0 stays an index of 0 by division, is its trend below 0 by difference, and
/// is told at `log_widths` for logarithms. All widths 0: all indices 0.
[[nodiscard]] IndexSeries index_series(const YearSeries& widths, const IndexOptions& options);

} // namespace pithward::dating
