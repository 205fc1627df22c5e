#include "libcore/pith/concentric.h"

#include <Eigen/Dense>

#include <algorithm>

namespace pithward::pith {

namespace {

using Eigen::Vector2d;

constexpr double farthest_centre_mm = 1000.0;

} // namespace

std::optional<Vector2d> concentric_centre(std::span<const std::vector<Vector2d>> curves, const Vector2d& start) {
    const auto misfit = [&](const Vector2d& centre, Eigen::Matrix2d* normal, Vector2d* pull) {
        double sum = 0.0;
        for (const std::vector<Vector2d>& curve : curves) {
            const auto n = static_cast<double>(curve.size());
            double radius = 0.0;
            Vector2d mean = Vector2d::Zero();
            for (const Vector2d& point : curve) {
                radius += (point - centre).norm() / n;
                mean += (centre - point).normalized() / n;
            }
            for (const Vector2d& point : curve) {
                const double residual = (point - centre).norm() - radius;
                sum += residual * residual;
                if (normal != nullptr) {
                    const Vector2d slope = (centre - point).normalized() - mean;
                    *normal += slope * slope.transpose();
                    *pull -= slope * residual;
                }
            }
        }
        return sum;
    };
    Vector2d centre = start;
    double damping = 1e-3;
    for (int round = 0; round < 200; ++round) {
        Eigen::Matrix2d normal = Eigen::Matrix2d::Zero();
        Vector2d pull = Vector2d::Zero();
        const double before = misfit(centre, &normal, &pull);
        const Eigen::Matrix2d damped = normal + damping * Eigen::Matrix2d(normal.diagonal().asDiagonal());
        const Vector2d step = damped.ldlt().solve(pull);
        if (!step.allFinite()) {
            return std::nullopt;
        }
        if (misfit(centre + step, nullptr, nullptr) < before) {
            centre += step;
            damping = std::max(0.3 * damping, 1e-9);
            if (step.norm() < 1e-7 * (1.0 + centre.norm())) {
                break;
            }
        } else {
            damping *= 10.0;
            if (damping > 1e8) {
                break;
            }
        }
    }
    return (centre - start).norm() < farthest_centre_mm ? std::optional(centre) : std::nullopt;
}

} // namespace pithward::pith
