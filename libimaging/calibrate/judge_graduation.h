#pragma once

#include "libimaging/calibrate/graduation.h"

#include <optional>
#include <vector>

namespace pithward::calibrate {

/// What the lengths of a ruler's marks say of its graduation.
struct GraduationJudgement {
    Graduation graduation = Graduation::Millimetre;
    double lead = 0.0; ///< Natural log odds against the next likely graduation.
};

/// Judges by the pattern in which longer marks return. Each kind of ruler, begun at each of its marks, explains the
/// lengths (in periods; not a number where unknown) by one level for each rank, the rank being how often the number is
/// a multiple of what longer marks return at; the best is chosen by Schwarz's criterion with lopsided Laplace
/// residuals, since wear shortens marks (Schwarz 1978, Koenker and Machado 1999; from memory). Nothing when there is no
/// such pattern.
[[nodiscard]] std::optional<GraduationJudgement> judge_graduation(const std::vector<double>& lengths);

/// A lead from which a judgement stands on its own.
inline constexpr double sure_lead = 4.0;

} // namespace pithward::calibrate
