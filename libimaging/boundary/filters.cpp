#include "libimaging/boundary/filters.h"

#include <opencv2/core/utility.hpp>
#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

/// From this standard deviation on, running means replace the Gaussian.
constexpr double wide = 4.0;
constexpr int passes = 3;

/// Half length of a running mean which, done `passes` times, has the standard deviation asked for.
int half_length(double sigma) {
    return std::max(1, static_cast<int>(std::lround(0.5 * (std::sqrt(12.0 * sigma * sigma / passes + 1.0) - 1.0))));
}

/// Smooths along rows or along columns, in place.
void smooth_part(cv::Mat1f values, double sigma, bool along_s) {
    if (sigma < wide) {
        const int size = 2 * static_cast<int>(std::ceil(3.5 * sigma)) + 1;
        cv::GaussianBlur(values, values, along_s ? cv::Size(size, 1) : cv::Size(1, size), along_s ? sigma : 0.0,
                         along_s ? 0.0 : sigma, cv::BORDER_REPLICATE);
        return;
    }
    const int size = 2 * half_length(sigma) + 1;
    for (int pass = 0; pass < passes; ++pass) {
        cv::blur(values, values, along_s ? cv::Size(size, 1) : cv::Size(1, size), cv::Point(-1, -1),
                 cv::BORDER_REPLICATE);
    }
}

/// The lines that are smoothed know nothing of each other, so they are shared out.
void smooth_along(cv::Mat1f& values, double sigma, bool along_s) {
    if (sigma <= 0.0) {
        return;
    }
    cv::parallel_for_(cv::Range(0, along_s ? values.rows : values.cols), [&](const cv::Range& part) {
        smooth_part(along_s ? values.rowRange(part) : values.colRange(part), sigma, along_s);
    });
}

} // namespace

cv::Mat1f smooth(const cv::Mat1f& values, double sigma_lane, double sigma_s) {
    cv::Mat1f out = values.clone();
    smooth_along(out, sigma_lane, false);
    smooth_along(out, sigma_s, true);
    return out;
}

std::vector<float> smooth(const std::vector<float>& values, double sigma) {
    const cv::Mat1f soft = smooth(cv::Mat1f(values, true).reshape(1, 1), 0.0, sigma);
    return {soft.begin(), soft.end()};
}

cv::Mat1f masked_smooth(const cv::Mat1f& values, const cv::Mat1f& weights, double sigma_lane, double sigma_s) {
    const cv::Mat1f sum = smooth(values.mul(weights), sigma_lane, sigma_s);
    const cv::Mat1f mass = smooth(weights, sigma_lane, sigma_s);
    return sum / cv::max(mass, 1e-3F);
}

cv::Mat1f shorten(const cv::Mat1f& values, int step) {
    if (step <= 1) {
        return values.clone();
    }
    const int columns = values.cols / step;
    cv::Mat1f out(values.rows, columns);
    for (int row = 0; row < values.rows; ++row) {
        const float* from = values[row];
        for (int column = 0; column < columns; ++column) {
            float sum = 0.0F;
            for (int k = 0; k < step; ++k) {
                sum += *from++;
            }
            out(row, column) = sum / static_cast<float>(step);
        }
    }
    return out;
}

cv::Mat1f lengthen(const cv::Mat1f& values, int step, int columns) {
    cv::Mat1f out(values.rows, columns);
    cv::parallel_for_(cv::Range(0, values.rows), [&](const cv::Range& part) {
        for (int row = part.start; row < part.end; ++row) {
            for (int column = 0; column < columns; ++column) {
                out(row, column) = sample(values[row], values.cols, (column + 0.5) / step - 0.5);
            }
        }
    });
    return out;
}

float sample(const float* row, int columns, double column) {
    const double inside = std::clamp(column, 0.0, columns - 1.0);
    const int left = std::min(static_cast<int>(inside), std::max(0, columns - 2));
    const int right = std::min(left + 1, columns - 1);
    const auto share = static_cast<float>(inside - left);
    return row[left] + share * (row[right] - row[left]);
}

} // namespace pithward::boundary
