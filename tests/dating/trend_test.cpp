#include "libcore/dating/index_series.h"
#include "libcore/dating/trend.h"
#include "tests/dating/made_up.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

using namespace dating;
using Eigen::ArrayXd;

Trend trend_of(const ArrayXd& values, TrendKind kind, double period = 32.0) {
    return fit_trend(values, kind, period, true);
}

TEST(Trend, ExponentialFindsTheCurveThatMadeTheValues) {
    const ArrayXd time = ArrayXd::LinSpaced(150, 0.0, 149.0);
    const ArrayXd curve = 2.5 * (-0.04 * time).exp() + 0.6;
    const Trend trend = trend_of(curve, TrendKind::Exponential);
    EXPECT_EQ(trend.used, TrendKind::Exponential);
    EXPECT_TRUE(trend.remark.empty());
    EXPECT_LT((trend.curve - curve).abs().maxCoeff(), 1e-6);
}

TEST(Trend, ExponentialPassesGaps) {
    const ArrayXd time = ArrayXd::LinSpaced(100, 0.0, 99.0);
    ArrayXd values = 2.0 * (-0.05 * time).exp() + 0.5;
    values(20) = none;
    const Trend trend = trend_of(values, TrendKind::Exponential);
    EXPECT_TRUE(std::isnan(trend.curve(20)));
    EXPECT_NEAR(trend.curve(21), values(21), 1e-6);
}

TEST(Trend, ExponentialFallsBackToAFallingLineThenToTheMeanAndSaysSo) {
    const Trend line = trend_of(ArrayXd::LinSpaced(80, 3.0, 1.0), TrendKind::Exponential);
    EXPECT_EQ(line.used, TrendKind::Line);
    EXPECT_EQ(line.remark, "no falling exponential fits: a line is taken");
    EXPECT_NEAR(line.curve(0), 3.0, 1e-12);
    const Trend mean = trend_of(ArrayXd::LinSpaced(80, 1.0, 3.0), TrendKind::Exponential);
    EXPECT_EQ(mean.used, TrendKind::Mean);
    EXPECT_EQ(mean.remark, "no falling exponential fits, and a line would not fall: the mean is taken");
    EXPECT_NEAR(mean.curve(0), 2.0, 1e-12);
}

TEST(Trend, NoTrendOfWidthsIsNegative) {
    // One giant ring beside tiny ones pulls the spline below 0 beside it.
    ArrayXd values = ArrayXd::Constant(60, 0.01);
    values(30) = 10.0;
    values(31) = 10.0;
    const Trend spline = trend_of(values, TrendKind::Spline, 12.0);
    EXPECT_NE(spline.used, TrendKind::Spline);
    EXPECT_NE(spline.remark.find("the spline would not stay positive"), std::string::npos);
    EXPECT_GT(spline.curve.minCoeff(), 0.0);
    const ArrayXd steep = array({9.0, 6.0, 3.0, 0.1, 0.1, 0.1, 0.1, 0.1});
    const Trend line = trend_of(steep, TrendKind::Line);
    EXPECT_EQ(line.used, TrendKind::Mean);
    EXPECT_EQ(line.remark, "a line would not stay positive: the mean is taken");
}

TEST(Trend, WordsGoThereAndBack) {
    for (const TrendKind kind : {TrendKind::Mean, TrendKind::Line, TrendKind::Exponential, TrendKind::Spline}) {
        EXPECT_EQ(trend_kind_from(word_of(kind)), kind);
    }
    EXPECT_FALSE(trend_kind_from("parabola").has_value());
}

IndexOptions plain(TrendKind kind) {
    IndexOptions options;
    options.trend = kind;
    options.prewhiten = false;
    return options;
}

TEST(IndexSeries, DividesOrSubtractsAndKeepsAbsentRingsAtZero) {
    const YearSeries widths = years_from(1900, {1.0, 3.0, 0.0, 4.0});
    IndexOptions options = plain(TrendKind::Mean);
    EXPECT_TRUE((index_series(widths, options).index.values == array({0.5, 1.5, 0.0, 2.0})).all());
    options.difference = true;
    EXPECT_TRUE((index_series(widths, options).index.values == array({-1.0, 1.0, -2.0, 2.0})).all());
}

TEST(IndexSeries, LogarithmTakesAnAbsentRingForHalfOfTheNarrowest) {
    IndexOptions options = plain(TrendKind::Mean);
    options.logarithm = true;
    const YearSeries widths = years_from(1900, {1.0, 0.0, 4.0});
    const ArrayXd logs = array({0.0, std::log(0.5), std::log(4.0)});
    EXPECT_LT((index_series(widths, options).index.values - (logs - logs.mean())).abs().maxCoeff(), 1e-12);
}

TEST(IndexSeries, OfWidthsThatAreAllZeroAreZero) {
    for (const TrendKind kind : {TrendKind::Mean, TrendKind::Line, TrendKind::Exponential, TrendKind::Spline}) {
        EXPECT_TRUE((index_series({1900, ArrayXd::Zero(40)}, plain(kind)).index.values == 0.0).all());
    }
}

TEST(IndexSeries, RefusesAPeriodThatMakesNoSense) {
    IndexOptions options;
    options.period = 2.0;
    EXPECT_FALSE(options.validate().empty());
    options.period = 32.0;
    EXPECT_TRUE(options.validate().empty());
}

} // namespace
} // namespace pithward::test
