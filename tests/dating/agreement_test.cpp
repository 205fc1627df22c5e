#include "libcore/dating/agreement.h"
#include "libcore/dating/student.h"
#include "tests/dating/made_up.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::test {
namespace {

using namespace dating;

TEST(Student, AgreesWithScipy) {
    // scipy 1.10.1: stats.t.sf(t, n).
    EXPECT_NEAR(student_tail(2.0, 10), 0.036694017385370196, 1e-15);
    EXPECT_NEAR(student_tail(5.0, 48) / 4.030832590735512e-06, 1.0, 1e-10);
    EXPECT_NEAR(student_tail(12.5, 100) / 1.8679624980065438e-22, 1.0, 1e-9);
    EXPECT_NEAR(student_tail(-1.5, 7), 0.911350756505015, 1e-14);
    EXPECT_NEAR(student_tail(0.0, 3), 0.5, 1e-15);
}

TEST(Student, CorrelationAtAProbabilityHasThatProbability) {
    for (const double p : {0.05, 0.001, 1e-6}) {
        EXPECT_NEAR(student_tail(t_of(correlation_at(p, 40), 40), 38) / p, 1.0, 1e-6);
    }
}

TEST(Student, TheBestOfManyIsLessRemarkable) {
    EXPECT_NEAR(best_of(0.01, 100), 1.0 - std::pow(0.99, 100), 1e-12);
    EXPECT_NEAR(best_of(1e-18, 1000) / 1e-15, 1.0, 1e-9);
    EXPECT_EQ(best_of(1.0, 5), 1.0);
}

TEST(Agreement, IsPearsonsWithTAndChance) {
    const YearSeries a = years_from(1900, {1.2, 0.9, 1.4, 1.1, 0.7, 1.6, 1.3, 0.8});
    const YearSeries b = years_from(1900, {1.0, 0.8, 1.1, 1.2, 0.6, 1.3, 1.25, 0.9});
    const Agreement found = agreement(a, b);
    EXPECT_EQ(found.overlap, 8);
    // scipy 1.10.1: stats.pearsonr(a, b), half of its two-sided p.
    EXPECT_NEAR(*found.r, 0.8676101705100207, 1e-14);
    EXPECT_NEAR(found.chance, 0.0026201341668187633, 1e-14);
    EXPECT_NEAR(found.t, 0.8676101705100207 * std::sqrt(6.0) / std::sqrt(1.0 - 0.8676101705100207 * 0.8676101705100207),
                1e-12);
}

TEST(Agreement, TakesTheYearsThatBothHaveAfterTheShift) {
    const YearSeries a = years_from(1900, {5.0, 1.0, none, 2.0, 4.0});
    const YearSeries b = years_from(1902, {9.0, 1.0, 3.0, 2.0, 4.0});
    const Agreement found = agreement(a, b, 2); // 1902, 1903, 1905, 1906
    EXPECT_EQ(found.overlap, 4);
    EXPECT_NEAR(*found.r, *agreement(years_from(0, {5, 1, 2, 4}), years_from(0, {9, 1, 2, 4})).r, 1e-15);
}

TEST(Agreement, OfWhatDoesNotVaryOrOverlapIsNothing) {
    const YearSeries a = years_from(1900, {1.0, 2.0, 3.0, 4.0});
    EXPECT_FALSE(agreement(a, years_from(1950, {1.0, 2.0, 3.0})).r.has_value());
    EXPECT_FALSE(agreement(a, years_from(1902, {1.0, 2.0, 3.0})).r.has_value());
    EXPECT_FALSE(agreement(a, years_from(1900, {0.1, 0.1, 0.1, 0.1})).r.has_value());
    EXPECT_EQ(*agreement(a, a).r, 1.0);
    EXPECT_TRUE(std::isfinite(agreement(a, a).t));
}

TEST(FiveYearLogarithms, AreAsPublished) {
    const YearSeries widths = years_from(1900, {1.0, 2.0, 3.0, 2.0, 2.0, 5.0});
    const YearSeries logs = five_year_logarithms(widths);
    EXPECT_TRUE(std::isnan(logs.at(1901)) && std::isnan(logs.at(1904)));
    EXPECT_NEAR(logs.at(1902), std::log(100.0 * 3.0 / 2.0), 1e-12);
    EXPECT_NEAR(logs.at(1903), std::log(100.0 * 2.0 / 2.8), 1e-12);
}

TEST(YearlyLogarithms, AreAsPublishedAndTakeAnAbsentRingForHalfOfTheNarrowest) {
    const YearSeries logs = yearly_logarithms(years_from(1900, {1.0, 2.0, 0.0, none, 3.0, 6.0}));
    EXPECT_TRUE(std::isnan(logs.at(1900)));
    EXPECT_NEAR(logs.at(1901), std::log(2.0), 1e-12);
    EXPECT_NEAR(logs.at(1902), std::log(0.5 / 2.0), 1e-12);
    EXPECT_TRUE(std::isnan(logs.at(1903)) && std::isnan(logs.at(1904)));
    EXPECT_NEAR(logs.at(1905), std::log(2.0), 1e-12);
}

TEST(SignAgreement, CountsAFlatYearHalf) {
    // By hand: up-up 1, down-up 0, flat-up 0.5, up-up 1, down-flat 0.5, flat-flat 0.5: 3.5 of 6.
    const YearSeries a = years_from(1900, {1, 2, 1, 1, 2, 1, 1});
    const YearSeries b = years_from(1900, {1, 2, 3, 4, 5, 5, 5});
    const SignAgreement found = sign_agreement(a, b);
    EXPECT_EQ(found.changes, 6);
    EXPECT_NEAR(*found.share, 3.5 / 6.0, 1e-12);
    EXPECT_EQ(found.level, 0.0);
}

TEST(SignAgreement, ReachesItsLevelsWhereTheNormalApproximationSays) {
    // n changes of which k agree: the share is over 0.5 + z / (2 sqrt(n)), z = 1.645, 2.326, 3.090.
    const auto level = [](int n, int k) {
        YearSeries a{1900, Eigen::ArrayXd::Zero(n + 1)};
        YearSeries b = a;
        for (int i = 1; i <= n; ++i) {
            a.values(i) = a.values(i - 1) + 1.0;
            b.values(i) = b.values(i - 1) + (i <= k ? 1.0 : -1.0);
        }
        return sign_agreement(a, b).level;
    };
    EXPECT_EQ(level(100, 58), 0.0);
    EXPECT_EQ(level(100, 59), 0.95);
    EXPECT_EQ(level(100, 62), 0.99);
    EXPECT_EQ(level(100, 66), 0.999);
}

TEST(SignAgreement, OfNothingIsNothing) {
    EXPECT_FALSE(sign_agreement(years_from(1900, {1.0, 2.0}), years_from(1901, {1.0, 2.0})).share.has_value());
}

} // namespace
} // namespace pithward::test
