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

constexpr double vessel_from =
    1.5; ///< Deviations of tone from the tissue around, in usual ones, from which it is a vessel ...
constexpr double vessel_full = 5.5;  ///< ... and from which it surely is.
constexpr double tissue_share = 0.7; ///< Weight of the tissue's tone against the vessels.
constexpr double soft_mm = 0.035;    ///< Smoothing of the profile.
constexpr double level_mm = 0.25;    ///< The levels before and after a change are taken over this length.
constexpr double least_fall = 0.25;  ///< In standard deviations of the signal.
constexpr double reach_mm = 0.25;    ///< Half window of the tracing.

/// Vessels are larger than anything else in the wood: the windows are broad and the flow is stiff.
const FlowPlan flow_plan{
    .rounds = {{0.60, 0.15, 5.0, 1.0},
               {0.40, 0.15, 5.0, 1.0},
               {0.30, 0.15, 4.0, 1.0},
               {0.20, 0.15, 3.0, 0.8},
               {0.15, 0.15, 2.5, 0.8},
               {0.12, 0.15, 2.0, 0.7}},
};

constexpr OddsModel odds{
    .constant = -4.82,
    .log_fall = 0.46,
    .log_relative_fall = -0.37,
    .softness = -1.84,
    .before = 4.72,
    .after = -6.22,
    .recovery = 1.36,
    .support = 1.26,
    .weaker_side = 1.16,
};

/// Standard deviation over the lanes that are wood for sure.
double middle_deviation(const cv::Mat1f& values, const Lanes& lanes) {
    const int half = std::min(lanes.centre(), static_cast<int>(1.5 / lanes.lane_mm));
    cv::Scalar mean;
    cv::Scalar deviation;
    cv::meanStdDev(values.rowRange(lanes.centre() - half, lanes.centre() + half + 1), mean, deviation);
    return std::max(deviation[0], 1e-6);
}

/// The tissue between the vessels, found by leaving out what deviates from it, and the usual deviation within it.
struct Tissue {
    cv::Mat1f tone;
    cv::Mat1f share; ///< 1 where a cell is tissue.
    double deviation = 0.1;
};

Tissue tissue_of(const cv::Mat1f& tone, const Lanes& lanes) {
    Tissue tissue{masked_smooth(tone, cv::Mat1f::ones(tone.size()), 0.6 / lanes.lane_mm, 1.0 / lanes.px_mm),
                  cv::Mat1f::ones(tone.size()), 0.1};
    const int half = std::min(lanes.centre(), static_cast<int>(1.5 / lanes.lane_mm));
    for (int round = 0; round < 3; ++round) {
        const cv::Mat1f away = cv::abs(tone - tissue.tone);
        std::vector<float> sample;
        for (int lane = lanes.centre() - half; lane <= lanes.centre() + half; ++lane) {
            for (int c = 0; c < away.cols; c += 3) {
                sample.push_back(away(lane, c));
            }
        }
        const auto middle = sample.begin() + static_cast<std::ptrdiff_t>(sample.size() / 2);
        std::nth_element(sample.begin(), middle, sample.end());
        tissue.deviation = std::max(1.4826 * static_cast<double>(*middle), 1e-4);
        cv::Mat(away < vessel_from * tissue.deviation).convertTo(tissue.share, CV_32F, 1.0 / 255.0);
        tissue.tone = masked_smooth(tone, tissue.share, 0.5 / lanes.lane_mm, 0.35 / lanes.px_mm);
    }
    return tissue;
}

/// Vessels, dark or filled with chalk, and the pale tissue among them: both end at the boundary, going inward.
Signal ring_porous_signal(const Relief& relief, const Lanes& lanes) {
    const Tissue tissue = tissue_of(relief.tone, lanes);
    cv::Mat1f vessels = cv::abs(relief.tone - tissue.tone) / tissue.deviation;
    vessels = cv::min(cv::max(vessels - vessel_from, 0.0), vessel_full - vessel_from);
    cv::Mat1f ground = tissue.tone.clone();
    relief.tone.copyTo(ground, cv::Mat(tissue.share > 0.5F));
    ground -= smooth(tissue.tone, 0.5 / lanes.lane_mm, 2.0 / lanes.px_mm);
    const double unit = middle_deviation(ground, lanes);
    ground = cv::max(cv::min(ground / unit, 2.0), -2.0);
    cv::Mat1f signal = vessels / middle_deviation(vessels, lanes) + tissue_share * ground;
    signal -= smooth(signal, 0.0, 1.5 / lanes.px_mm);
    signal = signal.mul(relief.solid);
    signal /= middle_deviation(signal, lanes);
    signal = cv::max(cv::min(signal, 3.0), -3.0);
    return {.traced = signal,
            .read = signal,
            .plan = flow_plan,
            .alike_across_mm = 0.2,
            .alike_along_mm = 0.1,
            .strange = 0.2F,
            .familiar = 0.5F};
}

/// Going inward the first row of vessels, which the next year laid down, ends at the latewood that the boundary closes.
std::vector<Mark> ring_porous_marks(const FlatStrip& strip) {
    const std::vector<float> line =
        smooth(profile(strip, strip.signal, 0, strip.lanes() - 1), std::max(1.2, soft_mm / strip.px_mm));
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

WoodModel ring_porous_model() {
    return {WoodType::RingPorous, ring_porous_signal, ring_porous_marks};
}

} // namespace pithward::boundary
