#pragma once

#include "libcore/dating/year_series.h"

#include <optional>

namespace pithward::dating {

/// How two series agree over the years that both have.
struct Agreement {
    int overlap = 0;         ///< Years with a value in both.
    std::optional<double> r; ///< Pearson's correlation; nothing for fewer than three years or a constant series.
    double t = 0.0;          ///< r sqrt(n - 2) / sqrt(1 - r^2).
    double chance = 1.0; ///< Probability of such an r or a higher one without any agreement, one position looked at.
};

/// The agreement of `series`, with `shift` added to its years, with `other`.
[[nodiscard]] Agreement agreement(const YearSeries& series, const YearSeries& other, int shift = 0);

/// ln(100 w / mean of w over the five years centred on it) (Baillie and Pilcher 1973, Tree-Ring Bulletin 33). No value
/// in the two years at either end, nor beside a gap. A width of 0 counts as in `log_widths`.
[[nodiscard]] YearSeries five_year_logarithms(const YearSeries& widths);

/// ln(w_i / w_(i-1)) (Hollstein 1980, Mitteleuropaeische Eichenchronologie). No value in the first year nor after a
/// gap. A width of 0 counts as in `log_widths`.
[[nodiscard]] YearSeries yearly_logarithms(const YearSeries& widths);

/// Sign agreement (Gleichlaeufigkeit; Eckstein and Bauch 1969, Forstwissenschaftliches Centralblatt 88).
struct SignAgreement {
    int changes = 0; ///< Changes from year to year that both series have.
    std::optional<double>
        share;           ///< Of changes in the same direction; one without a direction counts half. Nothing for none.
    double chance = 1.0; ///< By the normal approximation with the deviation 1 / (2 sqrt(changes)).
    double level = 0.0;  ///< The highest of the usual levels reached: 0.95, 0.99, 0.999; else 0.
};

[[nodiscard]] SignAgreement sign_agreement(const YearSeries& series, const YearSeries& other, int shift = 0);

} // namespace pithward::dating
