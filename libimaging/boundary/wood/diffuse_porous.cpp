#include "libimaging/boundary/falls.h"
#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/odds.h"
#include "libimaging/boundary/signs.h"
#include "libimaging/boundary/trace.h"
#include "libimaging/boundary/wood/wood_model.h"

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double ground_mm = 0.5;      ///< Rays and gradients are broader than this along the path.
constexpr double line_mm = 0.04;       ///< Standard deviation of a terminal line ...
constexpr double line_across_mm = 0.3; ///< ... along itself it is seen over this breadth.
constexpr double soft_mm = 0.02;       ///< Smoothing of the profile.
constexpr double level_mm = 0.10;      ///< The levels before and after a change are taken over this length.
constexpr double least_fall = 0.06;    ///< In standard deviations of the ground.
constexpr double reach_mm = 0.15;      ///< Half window of the tracing.

/// Thin faint lines in strong speckle: they show only when they are followed across the core.
const FlowPlan flow_plan{
    .rounds = {{0.100, 0.15, 5.0, 1.2},
               {0.080, 0.15, 4.0, 1.0},
               {0.060, 0.20, 4.0, 1.0},
               {0.050, 0.25, 3.0, 0.9},
               {0.040, 0.30, 2.5, 0.8},
               {0.035, 0.30, 2.0, 0.7},
               {0.035, 0.30, 1.5, 0.6},
               {0.035, 0.30, 1.5, 0.6}},
    .feature = FlowFeature::DarkLines,
    .step_mm = 0.025,
    .sureness = 0.1,
};

constexpr OddsModel odds{
    .constant = -2.85,
    .log_fall = 3.07,
    .log_relative_fall = -0.96,
    .softness = -3.27,
    .before = -1.81,
    .after = -0.83,
    .recovery = 2.76,
    .support = 0.50,
    .weaker_side = 0.66,
};

/// +1 when the lines are darker than the ground, -1 when they are paler: the stronger of the two tails after smoothing
/// along the lines.
double line_sign(const cv::Mat1f& ground, const cv::Mat1f& solid, const Lanes& lanes) {
    const double across = line_across_mm / lanes.lane_mm;
    const cv::Mat1f line = masked_smooth(ground, solid, across, line_mm / lanes.px_mm) -
                           masked_smooth(ground, solid, across, 3.0 * line_mm / lanes.px_mm);
    const int half = std::min(lanes.centre(), static_cast<int>(1.5 / lanes.lane_mm));
    double third = 0.0;
    for (int lane = lanes.centre() - half; lane <= lanes.centre() + half; ++lane) {
        for (int c = 0; c < line.cols; ++c) {
            const double v = static_cast<double>(line(lane, c) * solid(lane, c));
            third += v * v * v;
        }
    }
    return third <= 0.0 ? 1.0 : -1.0;
}

Signal diffuse_porous_signal(const Relief& relief, const Lanes& lanes) {
    cv::Mat1f ground = relief.tone - masked_smooth(relief.tone, relief.solid, 0.0, ground_mm / lanes.px_mm);
    ground = ground.mul(relief.solid);
    const int half = std::min(lanes.centre(), static_cast<int>(1.5 / lanes.lane_mm));
    const cv::Mat1f middle = cv::abs(ground.rowRange(lanes.centre() - half, lanes.centre() + half + 1));
    std::vector<float> sample(middle.begin(), middle.end());
    const auto m = sample.begin() + static_cast<std::ptrdiff_t>(sample.size() / 2);
    std::nth_element(sample.begin(), m, sample.end());
    ground /= std::max(1.4826 * static_cast<double>(*m), 1e-5);
    ground = cv::max(cv::min(ground, 4.0), -4.0);
    ground *= line_sign(ground, relief.solid, lanes);
    return {.traced = ground,
            .read = ground,
            .plan = flow_plan,
            .alike_across_mm = 0.3,
            .alike_along_mm = 0.05,
            .strange = 0.1F,
            .familiar = 0.35F};
}

/// Going inward the tone changes at the bark-side edge of the thin terminal line, and back behind it.
std::vector<Mark> diffuse_porous_marks(const FlatStrip& strip) {
    const std::vector<float> line =
        smooth(profile(strip, strip.signal, 0, strip.lanes() - 1), std::max(1.0, soft_mm / strip.px_mm));
    std::vector<Mark> marks;
    for (const Fall& fall : falls_of(line, least_fall)) {
        Mark mark;
        mark.column = fall.column;
        mark.signs.fall = fall.height;
        mark.signs.edge_mm = fall.height / std::max(fall.steepest, 1e-9) * strip.px_mm;
        mark.signs.recovery = fall.rise_after / fall.height;
        trace_mark(strip, strip.signal, line, reach_mm / strip.px_mm, mark);
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

WoodModel diffuse_porous_model() {
    return {WoodType::DiffusePorous, diffuse_porous_signal, diffuse_porous_marks};
}

} // namespace pithward::boundary
