#pragma once

#include "libcore/specimen/reading.h"
#include "libimaging/calibrate/ruler_calibration.h"

#include <optional>
#include <string>

namespace pithward {

/// How a ruler contradicts the scale told, in words.
struct ScaleDisagreement {
    double relative = 0.0; ///< Scale by the ruler over the scale told, less 1.
    std::string reason;
    std::string otherwise; ///< "; if one step of its marks is ..., ...", or empty.
};

/// Whether two scales told differ by more than `greatest_disagreement` in either direction.
[[nodiscard]] bool differ(const Calibration& one, const Calibration& other);

/// Nothing where they agree: within `greatest_disagreement`, or within two deviations of the ruler's scale.
[[nodiscard]] std::optional<ScaleDisagreement> disagreement(const RulerScale& scale, const Calibration& told);

/// Adds what a person should look at: a ruler that disagrees with the scale told, marks whose lengths contradict the
/// graduation given, and a path that runs across the only ruler.
void add_scale_findings(Reading& reading, const RulerCalibration& rulers, const std::optional<Calibration>& told);

/// The same for a ruler that was found on the scan and did not give the scale.
void add_seen_ruler_finding(Reading& reading, const RulerScale& seen, const Calibration& told);

/// Relative: a ruler that differs by more from the scale told is a finding.
inline constexpr double greatest_disagreement = 0.005;

} // namespace pithward
