#include "libcore/dating/autoregression.h"
#include "tests/dating/made_up.h"

#include <Eigen/Dense>
#include <gtest/gtest.h>

namespace pithward::test {
namespace {

using namespace dating;
using Eigen::ArrayXd;

/// x(t) = a x(t-1) + b x(t-2) + noise.
ArrayXd second_order(double a, double b, int n, unsigned seed) {
    Dice dice(seed);
    ArrayXd values = ArrayXd::Zero(n);
    for (int i = 2; i < n; ++i) {
        values(i) = a * values(i - 1) + b * values(i - 2) + dice.normal();
    }
    return values;
}

TEST(Autoregression, SolvesTheYuleWalkerEquations) {
    const ArrayXd values = second_order(0.5, -0.3, 300, 5);
    const ArrayXd rho = autocorrelation(values, 4);
    const Autoregression model = fit_autoregression(values, 4);
    Eigen::Matrix4d matrix;
    for (int i = 0; i < 4; ++i) {
        for (int j = 0; j < 4; ++j) {
            matrix(i, j) = rho(std::abs(i - j));
        }
    }
    const Eigen::Vector4d expected = matrix.ldlt().solve(rho.segment<4>(1).matrix());
    for (int i = 0; i < 4; ++i) {
        EXPECT_NEAR(model.coefficients[i], expected(i), 1e-10);
    }
}

TEST(Autoregression, FindsOrderAndCoefficientsOfALongSeries) {
    const Autoregression model = fit_autoregression(second_order(0.5, -0.3, 20'000, 5), 2);
    EXPECT_NEAR(model.coefficients[0], 0.5, 0.02);
    EXPECT_NEAR(model.coefficients[1], -0.3, 0.02);
    EXPECT_NEAR(model.variance, 1.0, 0.03);
    EXPECT_GE(fit_autoregression(second_order(0.5, -0.3, 2'000, 6)).order(), 2);
}

TEST(Autoregression, InnovationsAreWhatThePastDoesNotForetell) {
    Autoregression model;
    model.coefficients = {0.5, 0.25};
    model.lower = {{}, {0.6}};
    model.mean = 1.0;
    const ArrayXd left = innovations(array({1.5, 2.0, 3.0, none, 2.0, 2.0, 2.0}), model);
    EXPECT_NEAR(left(0), 1.5, 1e-12);
    EXPECT_NEAR(left(1), 2.0 - 0.6 * 0.5, 1e-12); // One value before it tells less than two.
    EXPECT_NEAR(left(2), 3.0 - 0.5 * 1.0 - 0.25 * 0.5, 1e-12);
    EXPECT_TRUE(std::isnan(left(3)));
    EXPECT_NEAR(left(4), 2.0, 1e-12);
    EXPECT_NEAR(left(5), 2.0 - 0.6, 1e-12);
    EXPECT_NEAR(left(6), 2.0 - 0.5 - 0.25, 1e-12);
}

TEST(Autoregression, OfConstantOrEmptySeriesHasNoOrder) {
    EXPECT_EQ(fit_autoregression(ArrayXd::Constant(50, 0.1)).order(), 0);
    EXPECT_EQ(fit_autoregression(ArrayXd()).order(), 0);
    EXPECT_EQ(autocorrelation(ArrayXd::Constant(50, 0.1), 3).size(), 0);
}

} // namespace
} // namespace pithward::test
