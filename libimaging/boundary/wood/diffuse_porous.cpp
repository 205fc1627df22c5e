#include "libimaging/boundary/falls.h"
#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/trace.h"
#include "libimaging/boundary/wood/fall_marks.h"
#include "libimaging/boundary/wood/wood_model.h"
#include "libimaging/robust/median.h"

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
/// A line thinner than the blur begins where this share of the fall is done, not half: its blurred flank is as broad as
/// the blur, and so lies mostly on the line's light side.
constexpr double line_begins = 0.75;

/// Thin faint lines in strong speckle: they show only when they are followed across the core.
const FlowPlan flow_plan{
    .rounds = {{0.100, 0.15, 5.0, 1.2, 0.3},
               {0.080, 0.15, 4.0, 1.0, 0.3},
               {0.060, 0.20, 4.0, 1.0, 0.3},
               {0.050, 0.25, 3.0, 0.9, 0.3},
               {0.040, 0.30, 2.5, 0.8, 0.3},
               {0.035, 0.30, 2.0, 0.7, 0.3},
               {0.035, 0.30, 1.5, 0.6, 0.3},
               {0.035, 0.30, 1.5, 0.6, 0.3}},
    .feature = FlowFeature::DarkLines,
    .step_mm = 0.025,
    .past_rays = true,
    .sureness = 0.1,
};

constexpr OddsModel odds{
    .constant = -1.04,
    .log_fall = 4.55,
    .log_relative_fall = -2.41,
    .softness = -1.60,
    .before = -2.31,
    .after = -0.64,
    .recovery = 1.54,
    .lopsidedness = -0.70,
    .support = 0.99,
    .weaker_side = 0.46,
};

constexpr SequenceOptions sequence{.taken = 0.4};

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
    ground /= std::max(deviation_of_median * static_cast<double>(median_in_place(sample)), 1e-5);
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
    const std::vector<Fall> falls = falls_of(line, least_fall);
    std::vector<Mark> marks = marks_from_falls(falls, strip.px_mm);
    for (std::size_t k = 0; k < falls.size(); ++k) {
        marks[k].column = column_of(line, falls[k], line_begins);
    }
    trace_marks(strip, strip.signal, line, std::vector<double>(marks.size(), reach_mm / strip.px_mm), marks);
    judge_marks(marks, line, level_mm, strip.px_mm, odds);
    return marks;
}

} // namespace

WoodModel diffuse_porous_model() {
    return {WoodType::DiffusePorous, diffuse_porous_signal, diffuse_porous_marks, sequence};
}

} // namespace pithward::boundary
