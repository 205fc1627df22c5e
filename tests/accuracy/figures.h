#pragma once

#include "tests/accuracy/case_score.h"

#include <optional>
#include <span>

namespace pithward::accuracy {

/// How well confidences hold as probabilities.
struct CalibrationError {
    int candidates = 0;
    /// Over ten bins of confidence the difference between its mean and the share that are annual, weighed by the number
    /// of candidates in the bin. Nothing without candidates.
    std::optional<double> expected;
};

/// Candidates with a confidence from `from` to `to`, both included.
[[nodiscard]] CalibrationError calibration_error(std::span<const Chance> chances, double from, double to);

/// How well stated deviations hold.
struct Spread {
    int values = 0;
    std::optional<double> spread;    ///< 1.4826 times the median magnitude: 1 where they hold (normal distribution).
    std::optional<double> share_far; ///< Beyond 4 of them.
};

[[nodiscard]] Spread spread_of(std::span<const double> normalised);

/// What cores come to together. A figure that nothing tells of is nothing.
struct Figures {
    int cores = 0;
    int rings = 0;
    int found = 0;
    int wrong = 0; ///< False boundaries.
    std::optional<double> f1;
    std::optional<double> worst_f1; ///< Of a single core.
    std::optional<double> escaped;  ///< Mistakes that nobody is pointed at, for 100 rings.
    std::optional<double> asked;    ///< Places to look at, as a share of the boundaries proposed.
    std::optional<double> error_px; ///< Median magnitude of the error of position.
    std::optional<double> bias_px;  ///< Median of the error.
    CalibrationError confidence;    ///< Candidates of 0.05 and more.
    CalibrationError doubtful;      ///< Between 0.1 and 0.9.
    Spread position;
    Spread width;
};

[[nodiscard]] Figures figures_of(std::span<const CaseScore> cores);

/// F1 of one core; 0 where nothing is found.
[[nodiscard]] double f1_of(const CaseScore& core);

} // namespace pithward::accuracy
