#include "libcore/dating/smoothing_spline.h"

#include <cmath>
#include <numbers>
#include <vector>

namespace pithward::dating {

namespace {

/// Solves a symmetric positive definite system with two diagonals beside the main one, in place.
class Pentadiagonal {
public:
    explicit Pentadiagonal(Eigen::Index size)
        : main(size)
        , first(size)
        , second(size) {}

    /// Overwrites the matrix by its factors L D L^T and the right side by the solution.
    void solve(Eigen::ArrayXd& right) {
        const Eigen::Index n = main.size();
        for (Eigen::Index i = 0; i < n; ++i) {
            // Here first(i) and second(i) are what L has in column i below the diagonal, times D.
            const double near = first(i) / main(i);
            const double far = second(i) / main(i);
            if (i + 1 < n) {
                main(i + 1) -= near * first(i);
                first(i + 1) -= near * second(i);
                right(i + 1) -= near * right(i);
            }
            if (i + 2 < n) {
                main(i + 2) -= far * second(i);
                right(i + 2) -= far * right(i);
            }
            first(i) = near;
            second(i) = far;
        }
        for (Eigen::Index i = n - 1; i >= 0; --i) {
            right(i) /= main(i);
            right(i) -= i + 1 < n ? first(i) * right(i + 1) : 0.0;
            right(i) -= i + 2 < n ? second(i) * right(i + 2) : 0.0;
        }
    }

    Eigen::ArrayXd main;   ///< (i, i)
    Eigen::ArrayXd first;  ///< (i, i + 1); the last is 0.
    Eigen::ArrayXd second; ///< (i, i + 2); the last two are 0.
};

} // namespace

double spline_stiffness(double period) {
    const double c = std::cos(2.0 * std::numbers::pi / period);
    return (2.0 + c) / (12.0 * (1.0 - c) * (1.0 - c));
}

double spline_response(double stiffness, double frequency) {
    const double c = std::cos(2.0 * std::numbers::pi * frequency);
    return 1.0 / (1.0 + 12.0 * stiffness * (1.0 - c) * (1.0 - c) / (2.0 + c));
}

Eigen::ArrayXd smoothing_spline(const Eigen::ArrayXd& values, double period) {
    std::vector<Eigen::Index> years;
    for (Eigen::Index i = 0; i < values.size(); ++i) {
        if (!std::isnan(values(i))) {
            years.push_back(i);
        }
    }
    const auto n = static_cast<Eigen::Index>(years.size());
    if (n < 3) {
        return values;
    }
    // Second differences of the values: the columns of Q in Reinsch's form of the problem (1967, Numerische Mathematik
    // 10; from memory): (R + stiffness Q^T Q) g = Q^T y, curve = y - stiffness Q g.
    const auto step = [&](Eigen::Index k) { return static_cast<double>(years[k + 1] - years[k]); };
    const auto q = [&](Eigen::Index column, int row) {
        const double before = 1.0 / step(column);
        const double after = 1.0 / step(column + 1);
        return row == 0 ? before : row == 1 ? -before - after : after;
    };
    const double stiffness = spline_stiffness(period);
    Pentadiagonal matrix(n - 2);
    Eigen::ArrayXd bend(n - 2);
    for (Eigen::Index j = 0; j < n - 2; ++j) {
        matrix.main(j) = (step(j) + step(j + 1)) / 3.0;
        matrix.first(j) = j + 1 < n - 2 ? step(j + 1) / 6.0 : 0.0;
        matrix.second(j) = j + 2 < n - 2 ? stiffness * q(j, 2) * q(j + 2, 0) : 0.0;
        bend(j) = 0.0;
        for (int row = 0; row < 3; ++row) {
            matrix.main(j) += stiffness * q(j, row) * q(j, row);
            bend(j) += q(j, row) * values(years[j + row]);
        }
        if (j + 1 < n - 2) {
            matrix.first(j) += stiffness * (q(j, 1) * q(j + 1, 0) + q(j, 2) * q(j + 1, 1));
        }
    }
    matrix.solve(bend);
    Eigen::ArrayXd curve = values;
    for (Eigen::Index j = 0; j < n - 2; ++j) {
        for (int row = 0; row < 3; ++row) {
            curve(years[j + row]) -= stiffness * q(j, row) * bend(j);
        }
    }
    return curve;
}

} // namespace pithward::dating
