#include "libimaging/calibrate/ruler_windows.h"

#include "libimaging/calibrate/graduation.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace pithward::calibrate {

namespace {

constexpr double window_mm = 20.0;
constexpr double stride_mm = 10.0;
constexpr double band_mm = 0.3;       ///< Rows averaged; every other band is looked at, since marks are longer.
constexpr double scale_within = 0.06; ///< Relative: the scale is known so well.
constexpr int overtones = 4;
constexpr double least_at_steps = 0.3; ///< Rendered rulers have 0.4 and more.
constexpr double close_mm = 1.0;       ///< Windows so near across the ruler are one.

/// The share of the power that lies at some frequency and its multiples, the best for any graduation. Frequencies in
/// bins.
double share_at_steps(const std::vector<double>& power, double size, double px_per_mm) {
    double all = 1e-12;
    for (const double p : power) {
        all += p;
    }
    const int last = static_cast<int>(power.size()) - 1;
    double best = 0.0;
    for (const GraduationKind& kind : graduation_kinds()) {
        const double middle = size / (kind.spacing.value() * px_per_mm);
        const int reach = static_cast<int>(2.0 * scale_within * middle) + 1; // in half bins
        for (int half_bins = -reach; half_bins <= reach; ++half_bins) {
            const double bin = middle + 0.5 * half_bins;
            double sum = 0.0;
            for (int k = 1; k <= overtones && k * bin + 1.0 <= last; ++k) {
                const auto at = static_cast<std::size_t>(std::lround(k * bin));
                sum += power[at - 1] + power[at] + power[at + 1];
            }
            best = std::max(best, sum / all);
        }
    }
    return best;
}

/// The power of the changes in one window of a profile, bin by bin; the mean and the slow light are left out.
std::vector<double> power_of(const cv::Mat1f& profile, int from, int size, int padded, double px_per_mm) {
    cv::Mat1f changes = cv::Mat1f::zeros(1, padded);
    for (int i = 0; i + 1 < size; ++i) {
        const double taper = 0.5 - 0.5 * std::cos(2.0 * std::numbers::pi * (i + 0.5) / size);
        changes(0, i) = static_cast<float>(taper) * (profile(0, from + i + 1) - profile(0, from + i));
    }
    cv::Mat2f spectrum;
    cv::dft(changes, spectrum, cv::DFT_COMPLEX_OUTPUT);
    // Longer marks return at multiples of the step: what is slower than 3 mm tells nothing.
    const int first = std::max(1, static_cast<int>(padded / (3.0 * px_per_mm)));
    std::vector<double> power(static_cast<std::size_t>(padded / 2), 0.0);
    for (int k = first; k < padded / 2; ++k) {
        const double magnitude = cv::norm(spectrum(0, k));
        power[static_cast<std::size_t>(k)] = magnitude * magnitude;
    }
    return power;
}

std::vector<RulerWindow> along_rows(const cv::Mat1f& grey, double px_per_mm, double px_per_mm_across) {
    std::vector<RulerWindow> windows;
    const int size = std::min(grey.cols, static_cast<int>(window_mm * px_per_mm));
    const int rows = std::max(1, static_cast<int>(std::lround(band_mm * px_per_mm_across)));
    const int stride = std::max(1, static_cast<int>(stride_mm * px_per_mm));
    if (size < 0.6 * window_mm * px_per_mm) {
        return windows;
    }
    const int padded = cv::getOptimalDFTSize(2 * size);
    cv::Mat1f profile;
    for (int y = 0; y + rows <= grey.rows; y += 2 * rows) {
        cv::reduce(grey.rowRange(y, y + rows), profile, 0, cv::REDUCE_AVG);
        for (int x = 0;; x = std::min(x + stride, grey.cols - size)) {
            const double share = share_at_steps(power_of(profile, x, size, padded, px_per_mm), padded, px_per_mm);
            if (share >= least_at_steps) {
                const double middle = y + 0.5 * (rows - 1);
                windows.push_back(
                    {{{static_cast<double>(x), middle}, {static_cast<double>(x + size - 1), middle}}, share});
            }
            if (x == grey.cols - size) {
                break;
            }
        }
    }
    return windows;
}

bool near(const RulerWindow& a, const RulerWindow& b, double px_per_mm) {
    const ImagePoint apart = (a.line.from + a.line.to - b.line.from - b.line.to) * (0.5 / px_per_mm);
    const ImagePoint along = a.line.along();
    return std::abs(apart.x * along.x + apart.y * along.y) < stride_mm &&
           std::abs(apart.x * along.y - apart.y * along.x) < close_mm;
}

} // namespace

std::vector<RulerWindow> ruler_windows(const cv::Mat1f& grey, double px_per_mm_x, double px_per_mm_y) {
    std::vector<RulerWindow> all = along_rows(grey, px_per_mm_x, px_per_mm_y);
    for (RulerWindow window : along_rows(grey.t(), px_per_mm_y, px_per_mm_x)) {
        std::swap(window.line.from.x, window.line.from.y);
        std::swap(window.line.to.x, window.line.to.y);
        all.push_back(window);
    }
    std::ranges::stable_sort(all, std::greater(), &RulerWindow::share);
    std::vector<RulerWindow> chosen;
    for (const RulerWindow& window : all) {
        if (chosen.size() < most_windows &&
            std::ranges::none_of(chosen, [&](const RulerWindow& c) { return near(c, window, px_per_mm_x); })) {
            chosen.push_back(window);
        }
    }
    return chosen;
}

} // namespace pithward::calibrate
