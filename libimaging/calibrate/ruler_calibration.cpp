#include "libimaging/calibrate/ruler_calibration.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace pithward {

namespace {

constexpr double same_direction = 0.5; ///< Sine of the least angle between two rulers that measure x and y apart.

double square(double value) {
    return value * value;
}

/// How a relative change of the scale along a normal comes from those in x and y.
Eigen::RowVector2d shares(ImagePoint normal, double px_per_mm_x, double px_per_mm_y) {
    const double x = square(normal.x * px_per_mm_x);
    const double y = square(normal.y * px_per_mm_y);
    return Eigen::RowVector2d(x, y) / (x + y);
}

void set_scales(RulerCalibration& out, double ratio) {
    const RulerScale& first = out.scales.front();
    if (out.scales.size() == 1) {
        out.px_per_mm_x = first.px_per_mm / std::hypot(first.normal.x, first.normal.y * ratio);
        out.px_per_mm_y = out.px_per_mm_x * ratio;
        return;
    }
    const RulerScale& second = out.scales.back();
    Eigen::Matrix2d equations;
    equations << square(first.normal.x), square(first.normal.y), square(second.normal.x), square(second.normal.y);
    const Eigen::Vector2d squares =
        equations.fullPivLu().solve(Eigen::Vector2d(square(first.px_per_mm), square(second.px_per_mm)));
    out.px_per_mm_x = std::sqrt(squares(0)); // not a number where the rulers contradict each other
    out.px_per_mm_y = std::sqrt(squares(1));
}

void set_deviations(RulerCalibration& out) {
    Eigen::Matrix2d changes;
    Eigen::Vector2d variances;
    for (std::size_t i = 0; i < out.scales.size(); ++i) {
        const auto row = static_cast<Eigen::Index>(i);
        changes.row(row) = shares(out.scales[i].normal, out.px_per_mm_x, out.px_per_mm_y);
        variances(row) = square(out.scales[i].relative_sd) + square(assumed_ruler_sd);
    }
    if (out.scales.size() == 1) {
        changes.row(1) = Eigen::RowVector2d(-1.0, 1.0);
        variances(1) = square(assumed_ratio_sd);
    }
    const Eigen::Matrix2d back = changes.inverse();
    const Eigen::Matrix2d covariance = back * variances.asDiagonal() * back.transpose();
    out.variance_x = covariance(0, 0);
    out.variance_y = covariance(1, 1);
    out.covariance = covariance(0, 1);
}

} // namespace

Calibration RulerCalibration::for_path(const std::vector<ImagePoint>& path) const {
    Calibration calibration{px_per_mm_x, px_per_mm_y, std::sqrt(std::max(variance_x, variance_y)),
                            Calibration::Source::Ruler};
    if (path.size() < 2) {
        return calibration;
    }
    const ImagePoint chord = path.back() - path.front();
    const double x = square(chord.x / px_per_mm_x);
    const double y = square(chord.y / px_per_mm_y);
    if (x + y > 0.0) {
        const double share = x / (x + y);
        calibration.relative_sd = std::sqrt(square(share) * variance_x + square(1.0 - share) * variance_y +
                                            2.0 * share * (1.0 - share) * covariance);
    }
    return calibration;
}

Outcome<RulerCalibration> calibration_by_rulers(const Scan& scan, std::vector<RulerScale> scales,
                                                const std::optional<Calibration>& told) {
    if (scales.empty() || scales.size() > 2) {
        return fail(scan.file, "one ruler line or two are needed, not " + std::to_string(scales.size()),
                    "give one line along the cores, or one along x and one along y");
    }
    if (scales.size() == 2) {
        const ImagePoint a = scales[0].normal;
        const ImagePoint b = scales[1].normal;
        if (std::abs(a.x * b.y - a.y * b.x) < same_direction) {
            return fail(scan.file, "both ruler lines run the same way",
                        "give one along x and one along y, or only one");
        }
    }
    RulerCalibration out;
    out.scales = std::move(scales);
    set_scales(out, told ? told->px_per_mm_y / told->px_per_mm_x : 1.0);
    const auto usable = [](double px_per_mm) {
        const double dpi = px_per_mm * Calibration::millimetres_per_inch;
        return dpi >= Calibration::least_dpi && dpi <= Calibration::greatest_dpi;
    };
    if (!usable(out.px_per_mm_x) || !usable(out.px_per_mm_y)) {
        return fail(scan.file, "the ruler would mean a resolution outside 100 to 50,000 dpi",
                    "check the ruler line and what one step of its marks is");
    }
    set_deviations(out);
    return out;
}

} // namespace pithward
