#include "libcore/dating/smoothing_spline.h"
#include "libcore/dating/year_series.h"
#include "tests/dating/made_up.h"

#include <Eigen/Dense>
#include <gtest/gtest.h>

#include <numbers>

namespace pithward::test {
namespace {

using namespace dating;
using Eigen::ArrayXd;
using Eigen::MatrixXd;

/// The amplitude that is left of a cosine in the middle of a long series.
double kept_of_cosine(double spline_period, double period) {
    constexpr int n = 4001;
    const ArrayXd cosine = (ArrayXd::LinSpaced(n, -2000.0, 2000.0) * 2.0 * std::numbers::pi / period).cos();
    return smoothing_spline(cosine, spline_period)(2000);
}

/// The same spline from dense matrices: (I + stiffness Q R^-1 Q^T) curve = values, over the years with values.
ArrayXd dense_spline(const ArrayXd& time, const ArrayXd& values, double period) {
    const Eigen::Index n = time.size();
    MatrixXd q = MatrixXd::Zero(n, n - 2);
    MatrixXd r = MatrixXd::Zero(n - 2, n - 2);
    for (Eigen::Index j = 0; j < n - 2; ++j) {
        const double before = time(j + 1) - time(j);
        const double after = time(j + 2) - time(j + 1);
        q.block(j, j, 3, 1) << 1.0 / before, -1.0 / before - 1.0 / after, 1.0 / after;
        r(j, j) = (before + after) / 3.0;
        if (j + 1 < n - 2) {
            r(j, j + 1) = r(j + 1, j) = after / 6.0;
        }
    }
    const MatrixXd system = MatrixXd::Identity(n, n) + spline_stiffness(period) * q * r.ldlt().solve(q.transpose());
    return system.ldlt().solve(values.matrix()).array();
}

TEST(SmoothingSpline, KeepsHalfOfACosineOfItsPeriod) {
    for (const double period : {5.0, 20.0, 32.0, 67.0, 100.0}) {
        EXPECT_NEAR(kept_of_cosine(period, period), 0.5, 1e-9) << period;
    }
}

TEST(SmoothingSpline, KeepsOfOtherPeriodsWhatTheFormulaSays) {
    for (const double period : {4.0, 16.0, 24.0, 50.0, 128.0}) {
        EXPECT_NEAR(kept_of_cosine(32.0, period), spline_response(spline_stiffness(32.0), 1.0 / period), 1e-9)
            << period;
    }
}

TEST(SmoothingSpline, AgreesWithADenseSolve) {
    Dice dice(3);
    ArrayXd values(60);
    for (double& value : values) {
        value = dice.normal();
    }
    const ArrayXd time = ArrayXd::LinSpaced(60, 0.0, 59.0);
    EXPECT_LT((smoothing_spline(values, 20.0) - dense_spline(time, values, 20.0)).abs().maxCoeff(), 1e-10);
}

TEST(SmoothingSpline, PassesGapsAtTheirTrueLength) {
    const ArrayXd values = array({1.0, 2.0, none, none, 2.0, 5.0, none, 3.0, 1.0});
    const ArrayXd curve = smoothing_spline(values, 6.0);
    const ArrayXd expected = dense_spline(array({0, 1, 4, 5, 7, 8}), array({1.0, 2.0, 2.0, 5.0, 3.0, 1.0}), 6.0);
    const ArrayXd there{{curve(0), curve(1), curve(4), curve(5), curve(7), curve(8)}};
    EXPECT_LT((there - expected).abs().maxCoeff(), 1e-12);
    EXPECT_TRUE(std::isnan(curve(2)) && std::isnan(curve(3)) && std::isnan(curve(6)));
}

TEST(SmoothingSpline, KeepsALineAndTooFewValuesAsTheyAre) {
    const ArrayXd line = ArrayXd::LinSpaced(50, 3.0, 1.0);
    EXPECT_LT((smoothing_spline(line, 10.0) - line).abs().maxCoeff(), 1e-10);
    const ArrayXd two = array({4.0, 2.0});
    EXPECT_TRUE((smoothing_spline(two, 10.0) == two).all());
    EXPECT_EQ(smoothing_spline(ArrayXd(), 10.0).size(), 0);
}

} // namespace
} // namespace pithward::test
