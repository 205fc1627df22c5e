#include "libimaging/code/corner_marks.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <optional>

namespace pithward::label {

namespace {

constexpr std::size_t most_marks = 1000;
constexpr std::size_t most_mates = 100;
constexpr std::size_t most_squares = 600;
constexpr double mark_modules = 7.0;
constexpr double least_sought_px = 1.6; ///< Smaller squares can't be told apart ...
constexpr double least_read_px = 1.0;   ///< ... but the library tries.

/// Breadths of five stretches in turn dark and light.
using Five = std::array<int, 5>;

bool is_mark(const Five& run, double least_module_px) {
    const int total = run[0] + run[1] + run[2] + run[3] + run[4];
    const double module = total / mark_modules;
    const auto near = [&](int breadth, double modules) {
        const double slack = std::max(0.5, 0.35 * modules) * module + 1.0; // a pixel by where the edges fall
        return std::abs(breadth - modules * module) <= slack;
    };
    return module >= least_module_px && run[0] > 0 && run[4] > 0 && near(run[0], 1.0) && near(run[1], 1.0) &&
           near(run[2], 3.0) && near(run[3], 1.0) && near(run[4], 1.0);
}

/// Calls `seen` with the run and the middle of each five stretches of a row that look like a mark.
void each_run(const std::uint8_t* row, int width, double least_module_px,
              const std::function<void(const Five& run, double middle)>& seen) {
    Five run{};
    int stretches = 0;
    int start = 0;
    for (int x = 1; x <= width; ++x) {
        if (x < width && (row[x] != 0) == (row[x - 1] != 0)) {
            continue;
        }
        std::rotate(run.begin(), run.begin() + 1, run.end());
        run.back() = x - start;
        ++stretches;
        if (row[x - 1] != 0 && stretches >= static_cast<int>(run.size()) && is_mark(run, least_module_px)) {
            seen(run, x - run[4] - run[3] - 0.5 * run[2] - 0.5);
        }
        start = x;
    }
}

/// The stretches above and below a dark pixel, with the middle of the dark one; nothing where they don't look like a
/// mark of about this size.
std::optional<double> middle_of_column(const cv::Mat& dark, int x, int y, double total_px) {
    const int reach = static_cast<int>(2.0 * total_px);
    Five run{};
    const auto walk = [&](int step) {
        int stretch = 2;
        int at = y;
        for (int n = 0; n < reach; ++n) {
            at += step;
            if (at < 0 || at >= dark.rows) {
                break;
            }
            const bool is_dark = dark.at<std::uint8_t>(at, x) != 0;
            const bool wants_dark = stretch % 2 == 0;
            if (is_dark != wants_dark) {
                stretch += step;
                if (stretch < 0 || stretch >= static_cast<int>(run.size())) {
                    break;
                }
            }
            ++run[static_cast<std::size_t>(stretch)];
        }
    };
    walk(-1);
    const int above = run[2];
    walk(1);
    const int below = run[2] - above;
    ++run[2];
    const double total = run[0] + run[1] + run[2] + run[3] + run[4];
    if (!is_mark(run, least_sought_px) || total > 1.6 * total_px || total_px > 1.6 * total) {
        return std::nullopt;
    }
    return y + 0.5 * (below - above);
}

double distance(ImagePoint a, ImagePoint b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

} // namespace

cv::Mat dark_pixels(const cv::Mat& grey) {
    constexpr int window = 65;      // several squares of a code at the sizes that are looked for at one level
    constexpr double contrast = 10; // of 255: paper and wood are not even
    cv::Mat dark;
    cv::adaptiveThreshold(grey, dark, 255, cv::ADAPTIVE_THRESH_MEAN_C, cv::THRESH_BINARY_INV, window, contrast);
    return dark;
}

std::vector<CornerMark> corner_marks(const cv::Mat& dark) {
    std::vector<CornerMark> marks;
    for (int y = 0; y < dark.rows && marks.size() < most_marks; ++y) {
        each_run(dark.ptr<std::uint8_t>(y), dark.cols, least_sought_px, [&](const Five& run, double middle) {
            const double total = run[0] + run[1] + run[2] + run[3] + run[4];
            const double module = total / mark_modules;
            const auto at_x = static_cast<int>(std::lround(middle));
            const ImagePoint here{middle, static_cast<double>(y)};
            const bool known = std::ranges::any_of(
                marks, [&](const CornerMark& mark) { return distance(mark.at, here) < 2.5 * mark.module; });
            if (known || marks.size() >= most_marks) {
                return;
            }
            if (const auto middle_y = middle_of_column(dark, at_x, y, total)) {
                marks.push_back({{middle, *middle_y}, module});
            }
        });
    }
    return marks;
}

int corner_like_runs(const cv::Mat& dark) {
    int count = 0;
    for (int y = 0; y < dark.rows; ++y) {
        each_run(dark.ptr<std::uint8_t>(y), dark.cols, least_read_px,
                 [&](const Five& /*run*/, double /*middle*/) { ++count; });
    }
    return count;
}

std::vector<CodeSquare> code_squares(const std::vector<CornerMark>& marks) {
    constexpr double shortest = 11.0; // modules between the middles of two corners: 14 in the smallest code ...
    constexpr double longest = 75.0;  // ... 58 in one that holds 300 bytes, and sizes are not sure
    constexpr double rim = 9.0;       // modules from a corner's middle to beyond the light rim
    std::vector<CodeSquare> squares;
    for (const CornerMark& corner : marks) {
        std::vector<const CornerMark*> mates;
        for (const CornerMark& mate : marks) {
            const double apart = distance(corner.at, mate.at) / corner.module;
            const double ratio = mate.module / corner.module;
            if (&mate != &corner && mates.size() < most_mates && apart > shortest && apart < longest && ratio > 0.6 &&
                ratio < 1.6) {
                mates.push_back(&mate);
            }
        }
        for (std::size_t i = 0; i < mates.size(); ++i) {
            for (std::size_t k = i + 1; k < mates.size() && squares.size() < most_squares; ++k) {
                const ImagePoint a = mates[i]->at - corner.at;
                const ImagePoint b = mates[k]->at - corner.at;
                const double long_a = std::hypot(a.x, a.y);
                const double long_b = std::hypot(b.x, b.y);
                const double cosine = (a.x * b.x + a.y * b.y) / (long_a * long_b);
                if (std::abs(long_a - long_b) > 0.2 * std::max(long_a, long_b) || std::abs(cosine) > 0.25) {
                    continue;
                }
                const std::array<ImagePoint, 4> corners{corner.at, mates[i]->at, mates[k]->at, corner.at + a + b};
                double left = corner.at.x;
                double right = corner.at.x;
                double top = corner.at.y;
                double bottom = corner.at.y;
                for (const ImagePoint& one : corners) {
                    left = std::min(left, one.x);
                    right = std::max(right, one.x);
                    top = std::min(top, one.y);
                    bottom = std::max(bottom, one.y);
                }
                const double wide = rim * corner.module;
                squares.push_back(
                    {{left - wide, top - wide, right - left + 2.0 * wide, bottom - top + 2.0 * wide}, corner.module});
            }
        }
    }
    return squares;
}

} // namespace pithward::label
