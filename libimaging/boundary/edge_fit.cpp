#include "libimaging/boundary/edge_fit.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pithward::boundary {

namespace {

using Vector = Eigen::Matrix<double, 5, 1>;

constexpr int steps = 15;
/// Weight of the start's shape of the change back, against a profile with unit depth: it only decides what the profile
/// leaves open.
constexpr double shape_prior = 0.03;

EdgeFit from_vector(const Vector& x, double blur) {
    return {x(0), x(1), x(2), std::exp(std::clamp(x(3), -3.0, 7.0)),
            blur * (1.0 + std::exp(std::clamp(x(4), -8.0, 5.0)))};
}

Vector to_vector(const EdgeFit& edge, double blur) {
    return Vector(edge.column, edge.light, edge.depth, std::log(std::max(edge.breadth, 0.1)),
                  std::log(std::max(edge.soft / blur - 1.0, 1e-3)));
}

Eigen::VectorXd residuals(const std::vector<float>& profile, int from, int to, double blur, const Vector& x,
                          const Vector& start) {
    const EdgeFit edge = from_vector(x, blur);
    const int n = to - from + 1;
    Eigen::VectorXd out(n + 2);
    for (int c = from; c <= to; ++c) {
        out(c - from) = static_cast<double>(profile[static_cast<std::size_t>(c)]) - blurred_edge(edge, blur, c);
    }
    out(n) = shape_prior * start(2) * (x(3) - start(3));
    out(n + 1) = shape_prior * start(2) * (x(4) - start(4));
    return out;
}

double normal_share(double z) {
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

} // namespace

double blurred_edge(const EdgeFit& edge, double blur, double column) {
    const double z = column - edge.column;
    return edge.light - edge.depth * (normal_share(z / blur) - normal_share((z - edge.breadth) / edge.soft));
}

std::optional<EdgeFit> fit_edge(const std::vector<float>& profile, int from, int to, double blur,
                                const EdgeFit& start) {
    from = std::max(from, 0);
    to = std::min(to, static_cast<int>(profile.size()) - 1);
    if (to - from < 5 || start.depth <= 0.0) {
        return std::nullopt;
    }
    const Vector origin = to_vector(start, blur);
    Vector x = origin;
    Eigen::VectorXd r = residuals(profile, from, to, blur, x, origin);
    double cost = r.squaredNorm();
    double damping = 1e-3;
    for (int step = 0; step < steps; ++step) {
        Eigen::MatrixXd jacobian(r.size(), x.size());
        for (Eigen::Index k = 0; k < x.size(); ++k) {
            constexpr double h = 1e-4;
            Vector moved = x;
            moved(k) += h;
            jacobian.col(k) = (residuals(profile, from, to, blur, moved, origin) - r) / h;
        }
        Eigen::MatrixXd normal = jacobian.transpose() * jacobian;
        normal.diagonal() *= 1.0 + damping;
        normal.diagonal().array() += 1e-12;
        const Vector tried = x - normal.ldlt().solve(jacobian.transpose() * r);
        const Eigen::VectorXd next = residuals(profile, from, to, blur, tried, origin);
        if (next.allFinite() && next.squaredNorm() < cost) {
            x = tried;
            r = next;
            cost = next.squaredNorm();
            damping *= 0.3;
        } else {
            damping *= 10.0;
        }
    }
    const EdgeFit fit = from_vector(x, blur);
    if (!std::isfinite(fit.column) || std::abs(fit.column - start.column) > 2.0 * blur || fit.depth <= 0.0) {
        return std::nullopt;
    }
    return fit;
}

} // namespace pithward::boundary
