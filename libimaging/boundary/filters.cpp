#include "libimaging/boundary/filters.h"

#include <opencv2/core/hal/intrin.hpp>
#include <opencv2/core/utility.hpp>
#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>

namespace pithward::boundary {

namespace {

/// From this standard deviation on, running means replace the Gaussian.
constexpr double wide = 4.0;
constexpr int passes = 3;

/// Half length of a running mean which, done `passes` times, has the standard deviation asked for.
int half_length(double sigma) {
    return std::max(1, static_cast<int>(std::lround(0.5 * (std::sqrt(12.0 * sigma * sigma / passes + 1.0) - 1.0))));
}

/// Shares `count` lines of `length` cells each out to the threads, where that is worth the while.
void share_out(int count, int length, const std::function<void(const cv::Range&)>& body) {
    constexpr int worth_sharing = 50'000;
    if (count * length < worth_sharing) {
        body(cv::Range(0, count));
    } else {
        cv::parallel_for_(cv::Range(0, count), body);
    }
}

/// So many rows are smoothed at once: their sums don't wait for each other.
constexpr int side_by_side = 4;

/// Running means along up to `side_by_side` rows, in place.
class RunningMeans {
public:
    RunningMeans(int columns, int half)
        : half_(half)
        , columns_(columns)
        , line_(static_cast<std::size_t>(side_by_side) * static_cast<std::size_t>(columns + 2 * half))
        , next_(line_) {}

    void over(cv::Mat1f rows) {
        std::array<float*, side_by_side> row{};
        for (int k = 0; k < side_by_side; ++k) {
            row[static_cast<std::size_t>(k)] = rows[std::min(k, rows.rows - 1)];
        }
        for (int c = 0; c < columns_; ++c) {
            cv::v_store(cells(line_, c), cv::v_float32x4(row[0][c], row[1][c], row[2][c], row[3][c]));
        }
        for (int pass = 0; pass < passes; ++pass) {
            once();
            line_.swap(next_);
        }
        for (int c = 0; c < columns_; ++c) {
            const float* mean = cells(line_, c);
            for (std::size_t k = 0; k < row.size(); ++k) {
                row[k][c] = mean[k];
            }
        }
    }

private:
    /// The cells of one column; there are `half` more columns than the rows have at each end.
    [[nodiscard]] float* cells(std::vector<float>& line, int column) const {
        return line.data() + static_cast<std::ptrdiff_t>(side_by_side) * (column + half_);
    }

    void once() {
        const cv::v_float32x4 first = cv::v_load(cells(line_, 0));
        const cv::v_float32x4 last = cv::v_load(cells(line_, columns_ - 1));
        for (int k = 1; k <= half_; ++k) {
            cv::v_store(cells(line_, -k), first);
            cv::v_store(cells(line_, columns_ - 1 + k), last);
        }
        const cv::v_float64x2 share = cv::v_setall_f64(1.0 / (2 * half_ + 1));
        cv::v_float64x2 sum = cv::v_setzero_f64();      // of the first two rows
        cv::v_float64x2 sum_high = cv::v_setzero_f64(); // and of the other two
        const auto add = [&](const cv::v_float32x4& values) {
            sum += cv::v_cvt_f64(values);
            sum_high += cv::v_cvt_f64_high(values);
        };
        for (int k = -half_; k < half_; ++k) {
            add(cv::v_load(cells(line_, k)));
        }
        for (int c = 0; c < columns_; ++c) {
            add(cv::v_load(cells(line_, c + half_)));
            cv::v_store(cells(next_, c), cv::v_cvt_f32(sum * share, sum_high * share));
            const cv::v_float32x4 left = cv::v_load(cells(line_, c - half_));
            sum -= cv::v_cvt_f64(left);
            sum_high -= cv::v_cvt_f64_high(left);
        }
    }

    int half_;
    int columns_;
    std::vector<float> line_;
    std::vector<float> next_;
};

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
        RunningMeans means(values.cols, half);
        for (int row = 0; row < values.rows; row += side_by_side) {
            means.over(values.rowRange(row, std::min(values.rows, row + side_by_side)));
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
    const int length = along_s ? values.cols : values.rows;
    share_out((lines + lines_each - 1) / lines_each, lines_each * length, [&](const cv::Range& part) {
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
    share_out(values.rows, columns, [&](const cv::Range& part) {
        for (int row = part.start; row < part.end; ++row) {
            for (int column = 0; column < columns; ++column) {
                out(row, column) = sample(values[row], values.cols, (column + 0.5) / step - 0.5);
            }
        }
    });
    return out;
}

cv::Mat1f flatten(const cv::Mat1f& values, const cv::Mat1f& flow_mm, double px_mm) {
    const auto columns_each_mm = static_cast<float>(1.0 / px_mm);
    const int last = values.cols - 1;
    cv::Mat1f flat(values.size());
    share_out(values.rows, values.cols, [&](const cv::Range& part) {
        for (int row = part.start; row < part.end; ++row) {
            const float* from = values[row];
            const float* moved = flow_mm[row];
            float* to = flat[row];
            for (int column = 0; column <= last; ++column) {
                const float off = moved[column] * columns_each_mm;
                const auto toward_zero = static_cast<float>(static_cast<int>(off));
                const float whole = toward_zero > off ? toward_zero - 1.0F : toward_zero; // floor, without a call
                const int left = column + static_cast<int>(whole);
                const float before = from[std::clamp(left, 0, last)];
                const float after = from[std::clamp(left + 1, 0, last)];
                to[column] = before + (off - whole) * (after - before);
            }
        }
    });
    return flat;
}

} // namespace pithward::boundary
