#include "libimaging/strip/core_texture.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>

namespace pithward::strip {

namespace {

constexpr double along_mm = 2.0;   ///< Averaging of the energies along the rows ...
constexpr double across_mm = 0.15; ///< ... and across them: the core's edges stay sharp.
constexpr double least_share =
    0.22; ///< Share of the energy that must belong to texture across the rows: hardwoods have rays along them.
constexpr double least_energy = 1.2; ///< In squared grey levels a pixel: noise of a smooth surface lies under it.
constexpr double slow_mm = 2.0;      ///< What changes over more than this is no graduation.
constexpr double same = 0.55;        ///< Correlation from which a profile repeats itself.

cv::Mat1f squared(const cv::Mat1f& values) {
    return values.mul(values);
}

cv::Mat1f averaged(const cv::Mat1f& values, double px_per_mm) {
    const auto odd = [](double size) { return 2 * static_cast<int>(0.5 * size) + 1; };
    cv::Mat1f out;
    cv::blur(values, out, cv::Size(odd(2.0 * along_mm * px_per_mm), odd(2.0 * across_mm * px_per_mm)));
    cv::blur(out, out, cv::Size(odd(2.0 * along_mm * px_per_mm), odd(2.0 * across_mm * px_per_mm)));
    return out;
}

double correlation(const std::vector<double>& values, int lag) {
    double mean = 0.0;
    for (const double v : values) {
        mean += v / static_cast<double>(values.size());
    }
    double both = 0.0;
    double power = 1e-9;
    const int n = static_cast<int>(values.size());
    for (int i = lag; i < n; ++i) {
        both += (*(values.begin() + i - lag) - mean) * (values[static_cast<std::size_t>(i)] - mean);
    }
    for (const double v : values) {
        power += (v - mean) * (v - mean);
    }
    return both / power * n / std::max(1, n - lag);
}

/// Brightness along a path, moved by `offset` rows.
std::vector<double> profile_along(const cv::Mat1f& grey, const std::vector<ImagePoint>& path, double offset) {
    std::vector<double> profile;
    for (std::size_t k = 0; k + 1 < path.size(); ++k) {
        const ImagePoint step = path[k + 1] - path[k];
        for (int x = static_cast<int>(path[k].x); x < static_cast<int>(path[k + 1].x); ++x) {
            const double y = path[k].y + step.y * (x - path[k].x) / step.x + offset;
            const int row = std::clamp(static_cast<int>(std::lround(y)), 0, grey.rows - 1);
            profile.push_back(static_cast<double>(grey(row, std::clamp(x, 0, grey.cols - 1))));
        }
    }
    return profile;
}

/// The profile less its running mean over `window` places: light that changes slowly is like itself at any lag.
std::vector<double> without_slow(const std::vector<double>& profile, int window) {
    std::vector<double> quick(profile.size());
    const int n = static_cast<int>(profile.size());
    double sum = 0.0;
    int from = 0;
    int to = 0;
    for (int i = 0; i < n; ++i) {
        for (; to < std::min(n, i + window / 2 + 1); ++to) {
            sum += profile[static_cast<std::size_t>(to)];
        }
        for (; from < i - window / 2; ++from) {
            sum -= profile[static_cast<std::size_t>(from)];
        }
        quick[static_cast<std::size_t>(i)] = profile[static_cast<std::size_t>(i)] - sum / (to - from);
    }
    return quick;
}

/// True when the profile agrees with itself moved by `lag`, within a twentieth of a millimetre or so.
bool repeats_at(const std::vector<double>& profile, double lag) {
    double best = -1.0;
    for (int k = static_cast<int>(0.97 * lag); k <= static_cast<int>(std::ceil(1.03 * lag)); ++k) {
        best = std::max(best, correlation(profile, k));
    }
    return best > same;
}

} // namespace

TextureMap texture_across_rows(const cv::Mat& picture, double px_per_mm) {
    TextureMap map;
    cv::Mat grey;
    cv::cvtColor(picture, grey, cv::COLOR_RGB2GRAY);
    grey.convertTo(map.grey, CV_32F);
    cv::Mat1f soft;
    cv::GaussianBlur(map.grey, soft, cv::Size(0, 0), 0.8);
    cv::Mat1f dx;
    cv::Mat1f dy;
    cv::Scharr(soft, dx, CV_32F, 1, 0, 1.0 / 32.0);
    cv::Scharr(soft, dy, CV_32F, 0, 1, 1.0 / 32.0);
    map.change = squared(dx);
    const cv::Mat1f across = averaged(map.change, px_per_mm);
    const cv::Mat1f along = averaged(squared(dy), px_per_mm);
    map.across.create(grey.size());
    for (int y = 0; y < grey.rows; ++y) {
        for (int x = 0; x < grey.cols; ++x) {
            const float energy = across(y, x) + along(y, x);
            map.across(y, x) = energy > least_energy && across(y, x) > least_share * energy ? 255 : 0;
        }
    }
    return map;
}

bool is_ruler(const cv::Mat1f& grey, const std::vector<ImagePoint>& path, double half_width, double px_per_mm) {
    const double step = 0.4 * px_per_mm;
    const int lines = 1 + static_cast<int>(2.0 * half_width / step);
    for (int line = 0; line < lines; ++line) {
        const std::vector<double> profile =
            without_slow(profile_along(grey, path, line * step - half_width), static_cast<int>(slow_mm * px_per_mm));
        if (repeats_at(profile, px_per_mm) && repeats_at(profile, 3.0 * px_per_mm)) {
            return true;
        }
    }
    return false;
}

} // namespace pithward::strip
