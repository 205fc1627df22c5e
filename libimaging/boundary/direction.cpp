#include "libimaging/boundary/direction.h"

#include "libimaging/boundary/filters.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace pithward::boundary {

namespace {

constexpr double soft_mm = 0.03;
constexpr double bend_half_mm = 1.4;   ///< The bend of a ring is taken between the path and this far off it ...
constexpr double bend_window_mm = 1.0; ///< ... once for each such length.
constexpr double most_by_curve = 4.0;  ///< Neighbouring rings share their waves: the bend is never surer than this.
constexpr double steep_share = 0.1;
constexpr double sureness = 0.5; ///< Log odds for each change that agrees.

} // namespace

double polarity_log_odds(const FlatStrip& strip) {
    const std::vector<float> tone = profile(strip, strip.signal, 0, strip.lanes() - 1);
    const cv::Mat1f soft = smooth(cv::Mat1f(tone, true).reshape(1, 1), 0.0, std::max(1.0, soft_mm / strip.px_mm));
    const int first = std::max(1, static_cast<int>(strip.column(0.0)));
    const int last = std::min(soft.cols - 1, static_cast<int>(strip.column(strip.path_mm)));
    // One change for each stretch between extremes: its steepest gradient.
    std::vector<double> changes;
    double extreme = 0.0;
    for (int c = first; c < last; ++c) {
        const double g = static_cast<double>(soft(0, c + 1) - soft(0, c));
        if (g * extreme < 0.0) {
            changes.push_back(extreme);
            extreme = g;
        } else if (std::abs(g) > std::abs(extreme)) {
            extreme = g;
        }
    }
    if (changes.size() < 4) {
        return 0.0;
    }
    std::ranges::sort(changes, [](double a, double b) { return std::abs(a) > std::abs(b); });
    // Half of the extremes of a clean core are boundaries: look at the stronger half, or the steepest tenth when noise
    // adds many.
    const std::size_t strong =
        std::max<std::size_t>(4, static_cast<std::size_t>(steep_share * static_cast<double>(changes.size())));
    changes.resize(std::min(changes.size(), strong));
    double falls = 0.0;
    for (const double change : changes) {
        falls += change < 0.0 ? 1.0 : -1.0;
    }
    return sureness * falls;
}

double curvature_log_odds(const FlatStrip& strip) {
    const int half = std::min(strip.centre(), static_cast<int>(bend_half_mm / strip.lane_mm));
    const int window = std::max(1, static_cast<int>(bend_window_mm / strip.px_mm));
    std::vector<double> bends;
    for (int c = static_cast<int>(strip.column(0.0)) + window / 2; c < strip.column(strip.path_mm); c += window) {
        // Wood on both sides, or the flow there means nothing.
        if (c >= 0 && c < strip.columns() && strip.weight(strip.centre() - half, c) > 0.5F &&
            strip.weight(strip.centre() + half, c) > 0.5F) {
            const double up = static_cast<double>(strip.flow_mm(strip.centre() - half, c));
            const double down = static_cast<double>(strip.flow_mm(strip.centre() + half, c));
            bends.push_back(0.5 * (up + down));
        }
    }
    if (bends.size() < 4) {
        return 0.0;
    }
    double mean = 0.0;
    double square = 0.0;
    for (const double bend : bends) {
        mean += bend / static_cast<double>(bends.size());
        square += bend * bend / static_cast<double>(bends.size());
    }
    const double deviation = std::sqrt(std::max(square - mean * mean, 1e-6) / static_cast<double>(bends.size()));
    return std::clamp(mean / deviation, -most_by_curve, most_by_curve);
}

Direction direction_of(const FlatStrip& strip) {
    const double polarity = polarity_log_odds(strip);
    const double curve = curvature_log_odds(strip);
    return {polarity + curve, std::abs(polarity) >= std::abs(curve) ? "polarity" : "curvature"};
}

} // namespace pithward::boundary
