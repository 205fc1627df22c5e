#include "libcore/dating/student.h"

#include <unsupported/Eigen/SpecialFunctions>

#include <algorithm>
#include <cmath>

namespace pithward::dating {

double student_tail(double t, double freedom) {
    if (freedom < 1.0) {
        return 1.0;
    }
    const double upper = 0.5 * Eigen::numext::betainc(0.5 * freedom, 0.5, freedom / (freedom + t * t));
    return t < 0.0 ? 1.0 - upper : upper;
}

double t_of(double r, int n) {
    if (n < 3) {
        return 0.0;
    }
    const double unexplained = std::sqrt(std::max(0.0, 1.0 - r * r));
    const double t = r * std::sqrt(static_cast<double>(n - 2));
    return unexplained * greatest_t < std::abs(t) ? std::copysign(greatest_t, r) : t / unexplained;
}

double correlation_at(double probability, int n) {
    double low = -1.0;
    double high = 1.0;
    constexpr int halvings = 50;
    for (int k = 0; k < halvings; ++k) {
        const double middle = 0.5 * (low + high);
        (student_tail(t_of(middle, n), n - 2) > probability ? low : high) = middle;
    }
    return high;
}

double best_of(double probability, double trials) {
    return probability >= 1.0 ? 1.0 : -std::expm1(trials * std::log1p(-probability));
}

} // namespace pithward::dating
