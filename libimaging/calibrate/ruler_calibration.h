#pragma once

#include "libcore/specimen/calibration.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/scan.h"
#include "libimaging/calibrate/ruler_scale.h"

#include <optional>
#include <vector>

namespace pithward {

/// The scale of a scan as its rulers give it. The deviations are of the logarithms, that is relative.
struct RulerCalibration {
    std::vector<RulerScale> scales; ///< One, or two that lie across each other.
    double px_per_mm_x = 0.0;
    double px_per_mm_y = 0.0;
    double variance_x = 0.0;
    double variance_y = 0.0;
    double covariance = 0.0;

    /// The calibration for lengths along a path: its relative deviation is that of lengths in the path's direction,
    /// which is small along a ruler and larger across it when only one was measured.
    [[nodiscard]] Calibration for_path(const std::vector<ImagePoint>& path) const;
};

/// Joins the scales of one ruler, or of two across each other. Square to marks with the unit normal n a scan has
/// sqrt((n_x p_x)^2 + (n_y p_y)^2) pixels to the millimetre, where p_x and p_y are its scales; two rulers give both.
/// One gives them with their ratio, which is that of the scale told, else 1, with a deviation of `assumed_ratio_sd`. A
/// ruler's own error, `assumed_ruler_sd`, is added to each. Fails on no ruler or more than two, on two along the same
/// direction, and on resolutions that no scan has.
[[nodiscard]] Outcome<RulerCalibration> calibration_by_rulers(const Scan& scan, std::vector<RulerScale> scales,
                                                              const std::optional<Calibration>& told);

/// Relative deviation of a ruler's own graduation: 0.05 mm in 100 mm (assumed).
inline constexpr double assumed_ruler_sd = 0.0005;
/// Relative deviation of a scanner's scale in y against that in x (assumed).
inline constexpr double assumed_ratio_sd = 0.002;

} // namespace pithward
