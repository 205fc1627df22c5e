#include "libimaging/boundary/filters.h"

#include <Eigen/Core>
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

/// So many rows are smoothed at once: their sums don't wait for each other.
constexpr int side_by_side = 4;
using Cells = Eigen::Array<float, side_by_side, 1>;
using Sums = Eigen::Array<double, side_by_side, 1>;

/// Running means along up to `side_by_side` rows, in place. `line` is room for them, `half` cells longer at each end.
void running_means(cv::Mat1f rows, int half, std::vector<Cells>& line) {
    const int last = rows.cols - 1;
    for (int row = 0; row < rows.rows; ++row) {
        const float* from = rows[row];
        for (int c = 0; c <= last; ++c) {
            line[static_cast<std::size_t>(c + half)](row) = from[c];
        }
    }
    const double share = 1.0 / (2 * half + 1);
    Cells* const middle = line.data() + half;
    std::vector<Cells> mean(static_cast<std::size_t>(rows.cols));
    for (int pass = 0; pass < passes; ++pass) {
        std::fill_n(line.begin(), half, middle[0]);
        std::fill_n(middle + last + 1, half, middle[last]);
        Sums sum = Sums::Zero();
        for (int k = -half; k <= half; ++k) {
            sum += middle[k].cast<double>();
        }
        for (int c = 0; c <= last; ++c) {
            mean[static_cast<std::size_t>(c)] = (sum * share).cast<float>();
            if (c < last) {
                sum += middle[c + half + 1].cast<double>() - middle[c - half].cast<double>();
            }
        }
        std::ranges::copy(mean, middle);
    }
    for (int row = 0; row < rows.rows; ++row) {
        float* to = rows[row];
        for (int c = 0; c <= last; ++c) {
            to[c] = middle[c](row);
        }
    }
}

/// Smooths along rows or along columns, in place.
void smooth_part(cv::Mat1f values, double sigma, bool along_s) {
    if (sigma < wide) {
        const int size = 2 * static_cast<int>(std::ceil(3.5 * sigma)) + 1;
        cv::GaussianBlur(values, values, along_s ? cv::Size(size, 1) : cv::Size(1, size), along_s ? sigma : 0.0,
                         along_s ? 0.0 : sigma, cv::BORDER_REPLICATE);
        return;
    }
    const int half = half_length(sigma);
    if (along_s) {
        std::vector<Cells> line(static_cast<std::size_t>(values.cols + 2 * half), Cells::Zero());
        for (int row = 0; row < values.rows; row += side_by_side) {
            running_means(values.rowRange(row, std::min(values.rows, row + side_by_side)), half, line);
        }
        return;
    }
    for (int pass = 0; pass < passes; ++pass) {
        cv::blur(values, values, cv::Size(1, 2 * half + 1), cv::Point(-1, -1), cv::BORDER_REPLICATE);
    }
}

/// The lines that are smoothed know nothing of each other, so they are shared out.
void smooth_along(cv::Mat1f& values, double sigma, bool along_s) {
    if (sigma <= 0.0) {
        return;
    }
    const int lines = along_s ? values.rows : values.cols;
    const int lines_each = along_s ? side_by_side : 1024;
    cv::parallel_for_(cv::Range(0, (lines + lines_each - 1) / lines_each), [&](const cv::Range& part) {
        const cv::Range own(part.start * lines_each, std::min(lines, part.end * lines_each));
        smooth_part(along_s ? values.rowRange(own) : values.colRange(own), sigma, along_s);
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

cv::Mat1f flatten(const cv::Mat1f& values, const cv::Mat1f& flow_mm, double px_mm) {
    const double columns_each_mm = 1.0 / px_mm;
    cv::Mat1f flat(values.size());
    cv::parallel_for_(cv::Range(0, values.rows), [&](const cv::Range& part) {
        for (int row = part.start; row < part.end; ++row) {
            const float* from = values[row];
            const float* moved = flow_mm[row];
            float* to = flat[row];
            for (int column = 0; column < values.cols; ++column) {
                to[column] = sample(from, values.cols, column + static_cast<double>(moved[column]) * columns_each_mm);
            }
        }
    });
    return flat;
}

} // namespace pithward::boundary
