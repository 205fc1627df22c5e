#include "libimaging/calibrate/ruler_band.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace pithward::calibrate {

namespace {

constexpr int block_columns = 512;
constexpr double most_samples = 4e7; ///< The band of a very long line is narrower.
constexpr float outside = std::numeric_limits<float>::quiet_NaN();

/// The part of a scan that some places need, as brightness.
struct Patch {
    cv::Mat1f grey;
    ImagePoint origin; ///< Of its first pixel, in pixels of the scan.
    double step = 1.0;

    [[nodiscard]] float value(ImagePoint at) const {
        const double x = (at.x - origin.x + 0.5) / step - 0.5; // pixel i covers [i * step, (i + 1) * step)
        const double y = (at.y - origin.y + 0.5) / step - 0.5;
        // Half a pixel at the border belongs to the scan, but has a neighbour on one side only.
        if (!(x >= -0.5 && y >= -0.5 && x <= grey.cols - 0.5 && y <= grey.rows - 0.5)) {
            return outside;
        }
        const double cx = std::clamp(x, 0.0, grey.cols - 1.0);
        const double cy = std::clamp(y, 0.0, grey.rows - 1.0);
        const int left = std::min(static_cast<int>(cx), std::max(0, grey.cols - 2));
        const int top = std::min(static_cast<int>(cy), std::max(0, grey.rows - 2));
        const int right = std::min(left + 1, grey.cols - 1);
        const int bottom = std::min(top + 1, grey.rows - 1);
        const auto fx = static_cast<float>(cx - left);
        const auto fy = static_cast<float>(cy - top);
        const float upper = grey(top, left) + fx * (grey(top, right) - grey(top, left));
        const float lower = grey(bottom, left) + fx * (grey(bottom, right) - grey(bottom, left));
        return upper + fy * (lower - upper);
    }
};

Outcome<Patch> patch_of(const ScanFile& scan, const std::vector<ImagePoint>& corners, int reduction) {
    double left = corners.front().x;
    double right = left;
    double top = corners.front().y;
    double bottom = top;
    for (const ImagePoint& corner : corners) {
        left = std::min(left, corner.x);
        right = std::max(right, corner.x);
        top = std::min(top, corner.y);
        bottom = std::max(bottom, corner.y);
    }
    const int margin = 2 * reduction;
    const auto whole = [](double value) { return static_cast<int>(std::floor(std::clamp(value, -2e6, 2e6))); };
    const cv::Rect all(0, 0, scan.header().width, scan.header().height);
    const cv::Rect wanted = cv::Rect(cv::Point(whole(left) - margin, whole(top) - margin),
                                     cv::Point(whole(right) + margin + 1, whole(bottom) + margin + 1)) &
                            all;
    Patch patch{{}, {static_cast<double>(wanted.x), static_cast<double>(wanted.y)}, static_cast<double>(reduction)};
    if (wanted.width < reduction || wanted.height < reduction) {
        return patch; // Nothing of it lies on the scan.
    }
    const auto pixels = scan.read(wanted, reduction);
    if (!pixels) {
        return tl::unexpected(pixels.error());
    }
    cv::Mat grey;
    cv::cvtColor(*pixels, grey, cv::COLOR_RGB2GRAY);
    grey.convertTo(patch.grey, CV_32F, grey.depth() == CV_16U ? 1.0 / 65535.0 : 1.0 / 255.0);
    return patch;
}

} // namespace

Outcome<Band> sample_band(const ScanFile& scan, const RulerLine& line, double half_breadth_px, int reduction) {
    Band band;
    band.step = reduction;
    const int columns = static_cast<int>(line.length_px() / band.step) + 1;
    band.middle = static_cast<int>(std::clamp(half_breadth_px / band.step, 0.0, 0.5 * most_samples / columns));
    band.grey.create(2 * band.middle + 1, columns);
    const ImagePoint along = line.along() * band.step;
    const ImagePoint across = line.across() * band.step;
    const auto place = [&](int row, int column) { return line.from + along * column + across * (row - band.middle); };
    const int last_row = band.grey.rows - 1;
    for (int from = 0; from < columns; from += block_columns) {
        const int to = std::min(columns, from + block_columns);
        const auto patch = patch_of(
            scan, {place(0, from), place(last_row, from), place(0, to - 1), place(last_row, to - 1)}, reduction);
        if (!patch) {
            return tl::unexpected(patch.error());
        }
        for (int row = 0; row <= last_row; ++row) {
            for (int column = from; column < to; ++column) {
                band.grey(row, column) = patch->value(place(row, column));
            }
        }
    }
    return band;
}

std::vector<double> mean_profile(const Band& band, cv::Range rows, double slant) {
    const auto columns = static_cast<std::size_t>(band.grey.cols);
    std::vector<double> sum(columns, 0.0);
    std::vector<double> count(columns, 0.0);
    for (int row = rows.start; row < rows.end; ++row) {
        const float* values = band.grey.ptr<float>(row);
        const double shift = slant * band.across(row) / band.step;
        for (int i = 0; i < band.grey.cols; ++i) {
            const double at = i + shift;
            if (at < 0.0 || at > band.grey.cols - 1) {
                continue;
            }
            const int left = std::min(static_cast<int>(at), band.grey.cols - 2);
            const double share = at - left;
            const double value = (1.0 - share) * static_cast<double>(values[left]) +
                                 (share > 0.0 ? share * static_cast<double>(values[left + 1]) : 0.0);
            if (std::isfinite(value)) {
                sum[static_cast<std::size_t>(i)] += value;
                count[static_cast<std::size_t>(i)] += 1.0;
            }
        }
    }
    double last = 0.0;
    for (std::size_t i = 0; i < columns; ++i) {
        last = count[i] > 0.0 ? sum[i] / count[i] : last;
        sum[i] = last;
    }
    return sum;
}

double value_at(const std::vector<double>& profile, double at) {
    const int last = static_cast<int>(profile.size()) - 1;
    const double inside = std::clamp(at, 0.0, static_cast<double>(last));
    const int i = std::min(static_cast<int>(inside), std::max(0, last - 1));
    const double f = inside - i;
    const auto p = [&](int k) { return profile[static_cast<std::size_t>(std::clamp(k, 0, last))]; };
    const double a = p(i - 1);
    const double b = p(i);
    const double c = p(i + 1);
    const double d = p(i + 2);
    return b + 0.5 * f * (c - a + f * (2.0 * a - 5.0 * b + 4.0 * c - d + f * (3.0 * (b - c) + d - a)));
}

} // namespace pithward::calibrate
