#include "libimaging/boundary/trace_curve.h"

#include "libimaging/robust/median.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double seen = 0.4; ///< Gain from which a group of lanes is said to show the change.

} // namespace

Curve fit_curve(const std::vector<Shift>& shifts) {
    std::vector<const Shift*> used;
    for (const Shift& shift : shifts) {
        if (shift.weight > 0.0 && std::abs(shift.u) <= curve_reach_mm) {
            used.push_back(&shift);
        }
    }
    Curve curve;
    if (used.size() < 3) {
        return curve;
    }
    const Eigen::Index terms = used.size() >= 6 ? 3 : 2;
    const auto n = static_cast<Eigen::Index>(used.size());
    Eigen::MatrixXd a(n, terms);
    Eigen::VectorXd b(n);
    Eigen::VectorXd weight(n);
    for (Eigen::Index i = 0; i < n; ++i) {
        const Shift& shift = *used[static_cast<std::size_t>(i)];
        a(i, 0) = 1.0;
        a(i, 1) = shift.u;
        if (terms == 3) {
            a(i, 2) = shift.u * shift.u;
        }
        b(i) = shift.columns;
        weight(i) = shift.weight;
    }
    weight /= weight.maxCoeff();
    Eigen::VectorXd x;
    Eigen::VectorXd robust = Eigen::VectorXd::Ones(n);
    Eigen::MatrixXd normal;
    double scale = 1.0;
    for (int round = 0; round < 4; ++round) {
        const Eigen::VectorXd w = weight.cwiseProduct(robust);
        normal = a.transpose() * w.asDiagonal() * a + 1e-6 * Eigen::MatrixXd::Identity(terms, terms);
        x = normal.ldlt().solve(a.transpose() * w.asDiagonal() * b);
        const Eigen::VectorXd residual = (b - a * x).cwiseAbs();
        scale = std::max(deviation_of_median * median(std::vector<double>(residual.begin(), residual.end())), 0.05);
        for (Eigen::Index i = 0; i < n; ++i) { // Tukey's biweight
            const double t = residual(i) / (4.685 * scale);
            robust(i) = t < 1.0 ? (1.0 - t * t) * (1.0 - t * t) : 0.0;
        }
    }
    curve.at_path = x(0);
    curve.slope = x(1);
    curve.bend = terms == 3 ? x(2) : 0.0;
    const Eigen::MatrixXd inverse = normal.ldlt().solve(Eigen::MatrixXd::Identity(terms, terms));
    curve.sd = scale * std::sqrt(std::max(0.0, inverse(0, 0)));
    return curve;
}

double support_of(const std::vector<Shift>& shifts, double from_u, double to_u) {
    double shown = 0.0;
    double all = 0.0;
    for (const Shift& shift : shifts) {
        if (shift.u >= from_u && shift.u <= to_u && !std::isnan(shift.gain)) {
            all += 1.0;
            shown += shift.weight > 0.0 && shift.gain > seen ? 1.0 : 0.0;
        }
    }
    return all > 0.0 ? shown / all : 0.0;
}

} // namespace pithward::boundary
