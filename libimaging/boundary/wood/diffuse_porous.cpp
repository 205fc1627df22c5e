#include "libimaging/boundary/agreeing_mix.h"
#include "libimaging/boundary/falls.h"
#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/share_profile.h"
#include "libimaging/boundary/trace.h"
#include "libimaging/boundary/wood/fall_marks.h"
#include "libimaging/boundary/wood/wood_model.h"
#include "libimaging/robust/median.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double middle_mm = 1.5;      ///< Half breadth that is surely wood when the path is right.
constexpr double ground_mm = 0.5;      ///< Rays and gradients are broader than this along the path.
constexpr double line_mm = 0.04;       ///< Standard deviation of a terminal line ...
constexpr double line_across_mm = 0.3; ///< ... along itself it is seen over this breadth.
constexpr double soft_mm = 0.02;       ///< Smoothing of the profile.
constexpr double level_mm = 0.10;      ///< The levels before and after a change are taken over this length.
constexpr double least_fall = 0.5;     ///< In usual deviations of the profile.
constexpr double reach_mm = 0.15;      ///< Half window of the tracing.
constexpr double cut_at = 0.7;         ///< Vessels deviate more from the ground than a line does, in deviations.
/// A line crosses all lanes, vessels fill some: the profile is the value that this share of the lanes beyond one half
/// lies below, on the side away from the vessels, ...
constexpr double beyond_half = 0.25;
constexpr double full_skew = 0.5; ///< ... when the ground is so skewed or more (third moment), else less.
/// A line thinner than the blur begins where this share of the fall is done, not half: its blurred flank is as broad as
/// the blur, and so lies mostly on the line's light side.
constexpr double line_begins = 0.66;
/// Deviation that stays however many lanes agree: lines differ in breadth and shade. From rendered cores
/// (tests/accuracy), not from theory.
constexpr double scatter_mm = 0.005;

/// Thin faint lines in strong speckle: they show only when they are followed across the core.
const FlowPlan flow_plan{
    .rounds = {{0.100, 0.15, 5.0, 1.2, 0.8},
               {0.080, 0.15, 4.0, 1.0, 0.8},
               {0.060, 0.20, 4.0, 1.0, 0.8},
               {0.050, 0.25, 3.0, 0.9, 0.8},
               {0.040, 0.30, 2.5, 0.8, 0.8},
               {0.035, 0.30, 2.0, 0.7, 0.8},
               {0.035, 0.30, 1.5, 0.6, 0.8},
               {0.035, 0.30, 1.5, 0.6, 0.8}},
    .follow = {{0.05, 0.3, 1.5, 1.0}, {0.035, 0.3, 1.0, 1.0}},
    .feature = FlowFeature::DarkLines,
    .step_mm = 0.025,
    .past_rays = true,
    .sureness = 0.1,
};

constexpr OddsModel odds{
    .constant = -12.99,
    .log_fall = 6.93,
    .log_relative_fall = -0.79,
    .softness = -2.11,
    .before = -1.30,
    .after = -1.67,
    .recovery = 3.64,
    .lopsidedness = -0.78,
    .support = 2.45,
    .weaker_side = -0.26,
};

constexpr SequenceOptions sequence{.taken = 0.6};

constexpr double left_out = 0.1; ///< Share of the strip at each end that is not learnt from.

/// Lanes that are surely of this core.
cv::Range middle_lanes(const Lanes& lanes) {
    const int half = std::min(lanes.centre(), static_cast<int>(middle_mm / lanes.lane_mm));
    return {lanes.centre() - half, lanes.centre() + half + 1};
}

/// Without the ends, which may be bark or the mount: their strong edges would outweigh the lines.
cv::Range inner_columns(const Lanes& lanes) {
    const int end = static_cast<int>(left_out * lanes.columns());
    return {end, lanes.columns() - end};
}

/// +1 when the lines are darker than the ground, -1 when they are paler: the stronger of the two tails after smoothing
/// along the lines.
double line_sign(const cv::Mat1f& ground, const cv::Mat1f& solid, const Lanes& lanes) {
    const double across = line_across_mm / lanes.lane_mm;
    const cv::Mat1f line = masked_smooth(ground, solid, across, line_mm / lanes.px_mm) -
                           masked_smooth(ground, solid, across, 3.0 * line_mm / lanes.px_mm);
    const cv::Range middle = middle_lanes(lanes);
    const cv::Range inner = inner_columns(lanes);
    double third = 0.0;
    for (int lane = middle.start; lane < middle.end; ++lane) {
        for (int c = inner.start; c < inner.end; ++c) {
            const double v = static_cast<double>(line(lane, c) * solid(lane, c));
            third += v * v * v;
        }
    }
    return third <= 0.0 ? 1.0 : -1.0;
}

/// A tone without what is broader than a line.
cv::Mat1f ground_of(const cv::Mat1f& tone, const cv::Mat1f& solid, const Lanes& lanes) {
    const cv::Mat1f ground = tone - masked_smooth(tone, solid, 0.0, ground_mm / lanes.px_mm);
    return ground.mul(solid);
}

/// The ground in usual deviations of the middle lanes, cut, with lines dark.
cv::Mat1f evened(cv::Mat1f ground, const cv::Mat1f& solid, const Lanes& lanes) {
    const cv::Mat1f middle = cv::abs(ground.rowRange(middle_lanes(lanes)));
    std::vector<float> sample(middle.begin(), middle.end());
    ground /= std::max(deviation_of_median * static_cast<double>(median_in_place(sample)), 1e-5);
    ground = cv::max(cv::min(ground, 4.0), -4.0);
    ground *= line_sign(ground, solid, lanes);
    return ground;
}

/// The ground with vessels no darker than lines, for all that follows lines across the core.
cv::Mat1f cut(const cv::Mat1f& ground) {
    return cv::max(cv::min(ground, cut_at), -cut_at);
}

/// The three channels' grounds.
std::array<cv::Mat1f, 3> coloured_ground(const Lanes& lanes, const cv::Mat1f& solid) {
    std::array<cv::Mat1f, 3> ground;
    for (std::size_t c = 0; c < ground.size(); ++c) {
        ground[c] = ground_of(tone_of(lanes.rgb[c]), solid, lanes);
    }
    return ground;
}

/// The grounds mixed so that the lines stand out from the vessels. They must lie straight for that, so the rings are
/// followed in grey first.
cv::Mat1f mixed_ground(const std::array<cv::Mat1f, 3>& ground, const cv::Mat1f& grey, const cv::Mat1f& solid,
                       const Lanes& lanes) {
    const cv::Mat1f flow = ring_flow(cut(grey), solid, lanes, flow_plan);
    std::array<cv::Mat1f, 3> flat;
    for (std::size_t c = 0; c < flat.size(); ++c) {
        const cv::Mat1f straight = flatten(ground[c], flow, lanes.px_mm);
        flat[c] = smooth(straight(middle_lanes(lanes), inner_columns(lanes)), 0.0, soft_mm / lanes.px_mm);
    }
    const std::array<double, 3> mix = agreeing_mix(flat, lanes.lane_mm);
    return mix[0] * ground[0] + mix[1] * ground[1] + mix[2] * ground[2];
}

Signal diffuse_porous_signal(const Relief& relief, const Lanes& lanes) {
    const cv::Mat1f grey = evened(ground_of(relief.tone, relief.solid, lanes), relief.solid, lanes);
    const std::array<cv::Mat1f, 3> coloured = coloured_ground(lanes, relief.solid);
    const cv::Mat1f ground = evened(mixed_ground(coloured, grey, relief.solid, lanes), relief.solid, lanes);
    return {.traced = cut(ground),
            .read = ground,
            .plan = flow_plan,
            .alike_across_mm = 0.3,
            .alike_along_mm = 0.05,
            .strange = 0.1F,
            .familiar = 0.35F};
}

/// The share of the lanes that the profile stays above: vessels make the ground skewed to their side.
double share_past_vessels(const FlatStrip& strip) {
    const int half = std::min(strip.centre(), static_cast<int>(middle_mm / strip.lane_mm));
    const int end = static_cast<int>(left_out * strip.columns());
    double second = 1e-9;
    double third = 0.0;
    double count = 1e-9;
    for (int lane = strip.centre() - half; lane <= strip.centre() + half; ++lane) {
        for (int c = end; c < strip.columns() - end; ++c) {
            const auto v = static_cast<double>(strip.signal(lane, c));
            second += v * v;
            third += v * v * v;
            count += 1.0;
        }
    }
    const double skew = third / count / std::pow(second / count, 1.5);
    return 0.5 - beyond_half * std::clamp(skew / full_skew, -1.0, 1.0);
}

/// A profile in units of its own usual deviation: most columns have no line, so that is the noise against which a line
/// must show.
std::vector<float> in_noise(std::vector<float> line) {
    std::vector<float> sizes;
    sizes.reserve(line.size());
    const float middle = median(line);
    for (const float value : line) {
        sizes.push_back(std::abs(value - middle));
    }
    const double noise = std::max(deviation_of_median * static_cast<double>(median_in_place(sizes)), 1e-6);
    for (float& value : line) {
        value /= static_cast<float>(noise);
    }
    return line;
}

/// Going inward the tone changes at the bark-side edge of the thin terminal line, and back behind it.
std::vector<Mark> diffuse_porous_marks(const FlatStrip& strip) {
    const double soft = std::max(1.0, soft_mm / strip.px_mm);
    const std::vector<float> line =
        in_noise(smooth(share_profile(strip, strip.signal, share_past_vessels(strip)), soft));
    const std::vector<Fall> falls = falls_of(line, least_fall);
    std::vector<Mark> marks = marks_from_falls(falls, strip.px_mm);
    for (std::size_t k = 0; k < falls.size(); ++k) {
        marks[k].column = column_of(line, falls[k], line_begins);
    }
    const cv::Mat1f traced = cut(strip.signal);
    const std::vector<float> usual = smooth(profile(strip, traced, 0, strip.lanes() - 1), soft);
    trace_marks(strip, traced, usual, std::vector<double>(marks.size(), reach_mm / strip.px_mm), marks);
    widen_deviations(marks, scatter_mm);
    judge_marks(marks, line, level_mm, strip.px_mm, odds);
    return marks;
}

} // namespace

WoodModel diffuse_porous_model() {
    WoodModel model{WoodType::DiffusePorous, diffuse_porous_signal, diffuse_porous_marks, sequence, 0.05};
    model.bark_has_lines = true;
    model.surest_edge = 0.85;
    model.cut_outdoes_rings = true;
    return model;
}

} // namespace pithward::boundary
