#pragma once

#include "libimaging/boundary/mark.h"

#include <array>

namespace pithward::boundary {

/// Weights of a logistic model of a mark's signs: the log odds are the constant plus the sum of weight times sign. Each
/// kind of wood has its own, fitted to rendered cores (tests/accuracy/fit_odds.py; docs/methods.md).
struct OddsModel {
    double constant = 0.0;
    double log_fall = 0.0;          ///< Of ln(fall).
    double log_relative_fall = 0.0; ///< Of ln(relative fall).
    double softness = 0.0;          ///< Of ln(relative edge) where it is above 0: softer than usual.
    double before = 0.0;            ///< Of the level before the change, cut at +-1.5.
    double after = 0.0;             ///< Of the level after it, cut likewise.
    double recovery = 0.0;          ///< Of the recovery, cut at 1.2.
    double lopsidedness = 0.0;      ///< Of the lopsidedness.
    double support = 0.0;           ///< Of the support.
    double weaker_side = 0.0;       ///< Of the lesser support of the two sides.
};

/// The signs as the model takes them, in the order of its weights.
[[nodiscard]] std::array<double, 9> terms(const Signs& signs);

[[nodiscard]] double log_odds(const OddsModel& model, const Signs& signs);

} // namespace pithward::boundary
