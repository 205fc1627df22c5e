#include "libimaging/boundary/edge_fit.h"
#include "libimaging/boundary/falls.h"
#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/odds.h"
#include "libimaging/boundary/signs.h"
#include "libimaging/boundary/trace.h"
#include "libimaging/boundary/wood/wood_model.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace pithward::boundary {

namespace {

constexpr double level_mm = 0.12;      ///< The levels before and after a change are taken over this length.
constexpr double least_fall = 0.015;   ///< Falls of tone under this are not looked at.
constexpr double finest_mm = 0.02;     ///< Smoothing of the profile ...
constexpr double finest_columns = 1.2; ///< ... but at least this.
constexpr double reach_edges = 1.5;    ///< Window of the tracing, in breadths of the change.
constexpr double latewood_half = 0.5;  ///< Latewood ends where the tone has risen by this share.

/// Broad to fine. The last rounds follow waves of the size of a ring.
const FlowPlan flow_plan{
    .rounds = {{0.50, 0.0, 2.0, 0.5},
               {0.35, 0.0, 2.0, 0.5},
               {0.25, 0.0, 2.0, 0.5},
               {0.18, 0.0, 1.2, 0.5},
               {0.12, 0.0, 1.2, 0.4},
               {0.10, 0.0, 0.8, 0.3},
               {0.08, 0.0, 0.6, 0.3},
               {0.08, 0.0, 0.6, 0.3}},
};

Signal conifer_signal(const Relief& relief, const Lanes& /*lanes*/) {
    return {.traced = relief.level, .read = relief.tone, .plan = flow_plan};
}

constexpr OddsModel odds{
    .constant = 2.07,
    .log_fall = 1.26,
    .log_relative_fall = 1.45,
    .softness = -2.34,
    .before = 2.46,
    .after = 1.61,
    .recovery = 1.19,
    .support = 2.34,
    .weaker_side = 1.10,
};

/// Breadth of the dark wood inward of a fall: up to where half of the way back to the next earlywood is done.
double latewood_breadth(const std::vector<float>& profile, const Fall& fall, double px_mm) {
    const double goal =
        static_cast<double>(profile[static_cast<std::size_t>(fall.bottom)]) + latewood_half * fall.rise_after;
    if (fall.rise_after < 0.3 * fall.height) {
        return 0.0;
    }
    auto c = static_cast<std::size_t>(fall.bottom);
    while (c + 1 < profile.size() && static_cast<double>(profile[c]) < goal) {
        ++c;
    }
    return (static_cast<double>(c) - fall.column) * px_mm;
}

/// Brightness from the tone: places are sought where half of the change of brightness is done, not of its logarithm.
std::vector<float> brightness_of(const std::vector<float>& tone) {
    std::vector<float> out(tone.size());
    std::ranges::transform(tone, out.begin(), [](float t) { return std::exp(t); });
    return out;
}

/// Blur of the profile in columns: the sharpest of the strong changes are blurred steps. A step under a Gaussian of
/// standard deviation b has a breadth (height over steepest gradient) of b times the root of 2 pi.
double blur_of(const std::vector<Fall>& falls, double least) {
    std::vector<std::pair<double, double>> edges; // height, breadth
    for (const Fall& fall : falls) {
        edges.emplace_back(fall.height, fall.height / std::max(fall.steepest, 1e-9));
    }
    std::ranges::sort(edges, [](const auto& a, const auto& b) { return a.first > b.first; });
    edges.resize((edges.size() + 1) / 2);
    if (edges.empty()) {
        return least;
    }
    const auto sharp = edges.begin() + static_cast<std::ptrdiff_t>(edges.size() / 5);
    std::nth_element(edges.begin(), sharp, edges.end(),
                     [](const auto& a, const auto& b) { return a.second < b.second; });
    return std::max(least, sharp->second / std::sqrt(2.0 * std::numbers::pi));
}

/// The place of a fall, by a fit of a blurred edge; the half-level where that fails.
double edge_column(const std::vector<float>& brightness, const Fall& fall, double blur, double latewood_columns) {
    const double light = static_cast<double>(brightness[static_cast<std::size_t>(fall.top)]);
    const double dark = static_cast<double>(brightness[static_cast<std::size_t>(fall.bottom)]);
    double half = fall.column;
    for (int c = fall.top; c < fall.bottom; ++c) {
        const double a = static_cast<double>(brightness[static_cast<std::size_t>(c)]);
        const double b = static_cast<double>(brightness[static_cast<std::size_t>(c) + 1]);
        if (a >= 0.5 * (light + dark) && b < 0.5 * (light + dark)) {
            half = c + (a - 0.5 * (light + dark)) / (a - b);
        }
    }
    const double tail = latewood_columns > 0.0 ? latewood_columns : fall.bottom - half;
    const int from = std::max(fall.top, static_cast<int>(std::floor(half - 3.0 * blur)));
    const int to = static_cast<int>(std::ceil(half + std::clamp(1.3 * tail, 2.5 * blur, 10.0 * blur)));
    const auto fit =
        fit_edge(brightness, from, to, blur, {half, light, light - dark, tail, std::max(0.4 * tail, blur)});
    return fit ? fit->column : half;
}

/// In conifers the tone falls steeply from the earlywood of the next year to the latewood which the boundary closes.
std::vector<Mark> conifer_marks(const FlatStrip& strip) {
    const std::vector<float> raw = profile(strip, strip.signal, 0, strip.lanes() - 1);
    const double sigma = std::max(finest_columns, finest_mm / strip.px_mm);
    const std::vector<float> line = smooth(raw, sigma);
    const std::vector<float> brightness = smooth(brightness_of(raw), sigma);
    const std::vector<Fall> falls = falls_of(line, least_fall);
    const double blur = blur_of(falls, sigma);

    std::vector<Mark> marks;
    for (const Fall& fall : falls) {
        Mark mark;
        mark.signs.fall = fall.height;
        mark.signs.edge_mm = fall.height / std::max(fall.steepest, 1e-9) * strip.px_mm;
        mark.signs.recovery = fall.rise_after / fall.height;
        mark.latewood_mm = latewood_breadth(line, fall, strip.px_mm);
        mark.column = edge_column(brightness, fall, blur, mark.latewood_mm / strip.px_mm);
        const double edge = std::clamp(mark.signs.edge_mm / strip.px_mm, 3.0, std::max(3.0, 0.15 / strip.px_mm));
        trace_mark(strip, strip.signal, line, reach_edges * edge, mark);
        marks.push_back(mark);
    }
    compare_with_neighbours(marks, strip.px_mm);
    set_levels(marks, line, level_mm, strip.px_mm);
    for (Mark& mark : marks) {
        mark.log_odds = log_odds(odds, mark.signs);
    }
    return marks;
}

} // namespace

WoodModel conifer_model() {
    return {WoodType::Conifer, conifer_signal, conifer_marks};
}

} // namespace pithward::boundary
