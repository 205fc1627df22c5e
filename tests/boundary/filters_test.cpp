#include "libimaging/boundary/filters.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace pithward::boundary {
namespace {

cv::Mat1f random_values(int rows, int columns, unsigned seed) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<float> value(-1.0F, 1.0F);
    cv::Mat1f values(rows, columns);
    for (float& v : values) {
        v = value(random);
    }
    return values;
}

/// A Gaussian mean by its definition, edges replicated.
double gaussian_mean(const cv::Mat1f& values, int row, int column, double sigma_lane, double sigma_s) {
    double sum = 0.0;
    double mass = 0.0;
    const int reach_lane = static_cast<int>(6.0 * sigma_lane);
    const int reach_s = static_cast<int>(6.0 * sigma_s);
    const auto part = [](int d, double sigma) { return sigma > 0.0 ? std::exp(-0.5 * d * d / (sigma * sigma)) : 1.0; };
    for (int dy = -reach_lane; dy <= reach_lane; ++dy) {
        for (int dx = -reach_s; dx <= reach_s; ++dx) {
            const double weight = part(dy, sigma_lane) * part(dx, sigma_s);
            sum += weight * static_cast<double>(values(std::clamp(row + dy, 0, values.rows - 1),
                                                       std::clamp(column + dx, 0, values.cols - 1)));
            mass += weight;
        }
    }
    return sum / mass;
}

TEST(Smooth, IsAGaussianMeanForSmallDeviations) {
    const cv::Mat1f values = random_values(20, 60, 5);
    for (const auto& [lane, s] : {std::pair{0.0, 1.0}, {0.8, 0.0}, {1.5, 2.5}, {3.0, 3.9}}) {
        const cv::Mat1f soft = smooth(values, lane, s);
        for (int row = 0; row < values.rows; row += 3) {
            for (int column = 0; column < values.cols; column += 4) {
                ASSERT_NEAR(soft(row, column), gaussian_mean(values, row, column, lane, s), 2e-3)
                    << lane << ", " << s << " at " << row << ", " << column;
            }
        }
    }
}

TEST(Smooth, WideOnesHaveTheDeviationAskedFor) {
    for (const double sigma : {4.0, 7.3, 20.0, 60.0}) {
        cv::Mat1f impulse = cv::Mat1f::zeros(1, 1001);
        impulse(0, 500) = 1.0F;
        const cv::Mat1f soft = smooth(impulse, 0.0, sigma);
        double variance = 0.0;
        double sum = 0.0;
        for (int c = 0; c < soft.cols; ++c) {
            sum += static_cast<double>(soft(0, c));
            variance += (c - 500.0) * (c - 500.0) * static_cast<double>(soft(0, c));
        }
        EXPECT_NEAR(sum, 1.0, 1e-4);
        EXPECT_NEAR(std::sqrt(variance), sigma, 0.12 * sigma);
    }
}

TEST(Smooth, LeavesAConstantAlone) {
    const cv::Mat1f values(7, 300, 0.7F);
    EXPECT_LT(cv::norm(smooth(values, 2.0, 9.0), values, cv::NORM_INF), 1e-5);
}

TEST(MaskedSmooth, TakesNothingFromCellsOfWeightZero) {
    cv::Mat1f values(5, 200, 2.0F);
    cv::Mat1f weights(5, 200, 1.0F);
    values.colRange(80, 90) = 1000.0F;
    weights.colRange(80, 90) = 0.0F;
    const cv::Mat1f soft = masked_smooth(values, weights, 0.0, 8.0);
    EXPECT_LT(cv::norm(soft, cv::Mat1f(5, 200, 2.0F), cv::NORM_INF), 1e-4);
}

TEST(Shorten, IsAMeanOverStepsAndDropsTheRest) {
    const cv::Mat1f values = random_values(3, 23, 8);
    const cv::Mat1f half = shorten(values, 4);
    ASSERT_EQ(half.size(), cv::Size(5, 3));
    EXPECT_NEAR(half(2, 4), cv::mean(values(cv::Range(2, 3), cv::Range(16, 20)))[0], 1e-6);
    EXPECT_EQ(shorten(values, 1).cols, 23);
}

TEST(ShortenAndLengthen, KeepALinearRampInPlace) {
    for (const int step : {2, 3, 5, 8}) {
        cv::Mat1f ramp(1, 40 * step);
        for (int c = 0; c < ramp.cols; ++c) {
            ramp(0, c) = 0.5F * static_cast<float>(c) - 3.0F;
        }
        const cv::Mat1f back = lengthen(shorten(ramp, step), step, ramp.cols);
        for (int c = step; c < ramp.cols - step; ++c) {
            ASSERT_NEAR(back(0, c), ramp(0, c), 1e-4) << "step " << step << ", column " << c;
        }
    }
}

TEST(Sample, IsLinearBetweenColumnsAndReplicatesTheEnds) {
    const std::vector<float> row{1.0F, 3.0F, 2.0F};
    EXPECT_FLOAT_EQ(sample(row.data(), 3, 0.25), 1.5F);
    EXPECT_FLOAT_EQ(sample(row.data(), 3, 1.5), 2.5F);
    EXPECT_FLOAT_EQ(sample(row.data(), 3, 2.0), 2.0F);
    EXPECT_FLOAT_EQ(sample(row.data(), 3, -4.0), 1.0F);
    EXPECT_FLOAT_EQ(sample(row.data(), 3, 9.0), 2.0F);
    EXPECT_FLOAT_EQ(sample(row.data(), 1, 0.5), 1.0F);
}

} // namespace
} // namespace pithward::boundary
