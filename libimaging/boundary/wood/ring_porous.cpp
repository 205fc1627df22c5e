#include "libimaging/boundary/falls.h"
#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/trace.h"
#include "libimaging/boundary/wood/fall_marks.h"
#include "libimaging/boundary/wood/vessel_zone.h"
#include "libimaging/boundary/wood/wood_model.h"
#include "libimaging/robust/median.h"

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
/// Where a boundary is placed, vessels and the pale tissue among them count alike: the signal is cut here, in standard
/// deviations. A single vessel that touches the boundary or stays off it then has no say, and what falls at the
/// boundary is earlywood against latewood.
constexpr double earlywood_from = 0.45;
/// The rings are followed by values cut a little higher.
constexpr double followed_to = 0.7;
constexpr double lesser_part = 0.5;    ///< Part of a fall that is no change of its own, against the other part.
constexpr double place_soft_mm = 0.02; ///< Smoothing of the profile in which boundaries are placed.
/// Deviation that stays however many lanes agree, since vessels touch the boundary where they happen to lie. From
/// rendered cores (tests/accuracy), not from theory.
constexpr double scatter_mm = 0.015;

constexpr double zone_soft_mm = 0.06;   ///< Smoothing of the profile in which the zone of large vessels is seen.
constexpr double zone_gap_mm = 0.12;    ///< Vessels farther apart than this are not of one zone.
constexpr double zone_stands_out = 0.6; ///< Least difference of zone and latewood, in deviations of the signal.

/// Vessels are larger than anything else in the wood: the windows are broad and the flow is stiff.
const FlowPlan flow_plan{
    .rounds = {{0.60, 0.15, 5.0, 1.0, 0.3},
               {0.40, 0.15, 5.0, 1.0, 0.3},
               {0.30, 0.15, 4.0, 1.0, 0.3},
               {0.20, 0.15, 3.0, 0.8, 0.3},
               {0.15, 0.15, 2.5, 0.8, 0.3},
               {0.12, 0.15, 2.0, 0.7, 0.3},
               {0.10, 0.15, 1.5, 0.6, 0.3},
               {0.08, 0.15, 0.8, 0.5, 0.3}},
    .past_rays = true,
};

constexpr OddsModel odds{
    .constant = -0.43,
    .log_fall = 1.03,
    .log_relative_fall = 1.30,
    .softness = -3.83,
    .before = 3.73,
    .after = -7.93,
    .recovery = 1.17,
    .lopsidedness = -0.40,
    .support = -0.36,
    .weaker_side = 0.92,
};

constexpr SequenceOptions sequence{.width_weight = 0.6, .taken = 2.1};

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

Tissue tissue_of(const cv::Mat1f& tone, const cv::Mat1f& solid, const Lanes& lanes) {
    Tissue tissue{masked_smooth(tone, solid, 0.6 / lanes.lane_mm, 1.0 / lanes.px_mm), cv::Mat1f::ones(tone.size()),
                  0.1};
    const int half = std::min(lanes.centre(), static_cast<int>(1.5 / lanes.lane_mm));
    for (int round = 0; round < 3; ++round) {
        const cv::Mat1f away = cv::abs(tone - tissue.tone);
        std::vector<float> sample;
        for (int lane = lanes.centre() - half; lane <= lanes.centre() + half; ++lane) {
            for (int c = 0; c < away.cols; c += 3) {
                sample.push_back(away(lane, c));
            }
        }
        tissue.deviation = std::max(deviation_of_median * static_cast<double>(median_in_place(sample)), 1e-4);
        cv::Mat(away < vessel_from * tissue.deviation).convertTo(tissue.share, CV_32F, 1.0 / 255.0);
        tissue.share = tissue.share.mul(solid);
        tissue.tone = masked_smooth(tone, tissue.share, 0.5 / lanes.lane_mm, 0.35 / lanes.px_mm);
    }
    return tissue;
}

/// Vessels, dark or filled with chalk, and the pale tissue among them: both end at the boundary, going inward.
Signal ring_porous_signal(const Relief& relief, const Lanes& lanes) {
    const Tissue tissue = tissue_of(relief.tone, relief.solid, lanes);
    cv::Mat1f vessels = cv::abs(relief.tone - tissue.tone) / tissue.deviation;
    vessels = cv::min(cv::max(vessels - vessel_from, 0.0), vessel_full - vessel_from);
    cv::Mat1f ground = tissue.tone.clone();
    relief.tone.copyTo(ground, cv::Mat(tissue.share > 0.5F));
    ground -= smooth(tissue.tone, 0.5 / lanes.lane_mm, 2.0 / lanes.px_mm);
    const double unit = middle_deviation(ground, lanes);
    ground = cv::max(cv::min(ground / unit, 2.0), -2.0);
    cv::Mat1f signal = vessels / middle_deviation(vessels, lanes) + tissue_share * ground;
    signal -= masked_smooth(signal, relief.solid, 0.0, 1.5 / lanes.px_mm);
    signal = signal.mul(relief.solid);
    signal /= middle_deviation(signal, lanes);
    signal = cv::max(cv::min(signal, 3.0), -3.0);
    return {.traced = cv::min(signal, followed_to),
            .read = signal,
            .plan = flow_plan,
            .alike_across_mm = 0.2,
            .alike_along_mm = 0.1,
            .strange = 0.2F,
            .familiar = 0.5F};
}

/// A fall as another profile of the same columns shows it: from its lightest column to the darkest.
Fall within(const std::vector<float>& line, Fall fall) {
    const auto first = line.begin() + fall.top;
    const auto bottom = std::min_element(first, line.begin() + fall.bottom + 1);
    const auto top = std::max_element(first, bottom + 1);
    fall.top = static_cast<int>(top - line.begin());
    fall.bottom = static_cast<int>(bottom - line.begin());
    fall.height = static_cast<double>(*top - *bottom);
    return fall;
}

/// Vessels end, then the tissue among them: a shoulder divides the fall, but only one of its parts is a change from
/// earlywood to latewood. Such parts are joined again.
std::vector<Fall> joined_parts(const std::vector<Fall>& falls, const std::vector<float>& placed) {
    std::vector<Fall> out;
    for (const Fall& fall : falls) {
        if (!out.empty() && out.back().bottom == fall.top) {
            Fall& before = out.back();
            const double earlier = within(placed, before).height;
            const double later = within(placed, fall).height;
            if (std::min(earlier, later) < lesser_part * std::max(earlier, later)) {
                before.bottom = fall.bottom;
                before.height += fall.height;
                before.steepest = std::max(before.steepest, fall.steepest);
                before.rise_after = fall.rise_after;
                before.steepest_rise = fall.steepest_rise;
                continue;
            }
        }
        out.push_back(fall);
    }
    return out;
}

/// Going inward the earlywood of the next year, its vessels and the pale tissue among them, ends at the latewood that
/// the boundary closes.
std::vector<Mark> ring_porous_marks(const FlatStrip& strip) {
    const std::vector<float> line =
        smooth(profile(strip, strip.signal, 0, strip.lanes() - 1), std::max(1.2, soft_mm / strip.px_mm));
    const cv::Mat1f traced = cv::min(strip.signal, earlywood_from);
    const std::vector<float> placed =
        smooth(profile(strip, traced, 0, strip.lanes() - 1), std::max(1.2, place_soft_mm / strip.px_mm));
    const std::vector<Fall> falls = joined_parts(falls_of(line, least_fall), placed);
    std::vector<Mark> marks = marks_from_falls(falls, strip.px_mm);
    for (std::size_t k = 0; k < falls.size(); ++k) {
        marks[k].column = column_of(placed, within(placed, falls[k]), 0.5);
    }
    trace_marks(strip, traced, placed, std::vector<double>(marks.size(), reach_mm / strip.px_mm), marks);
    widen_deviations(marks, scatter_mm);
    judge_marks(marks, line, level_mm, strip.px_mm, odds);
    return marks;
}

void ring_porous_latewood(const FlatStrip& strip, std::span<Mark> boundaries) {
    const std::vector<float> line =
        smooth(profile(strip, strip.signal, 0, strip.lanes() - 1), std::max(1.2, zone_soft_mm / strip.px_mm));
    std::vector<double> columns;
    for (const Mark& boundary : boundaries) {
        columns.push_back(boundary.column);
    }
    const std::vector<double> latewood =
        latewood_beside_vessels(line, columns, zone_gap_mm / strip.px_mm, zone_stands_out);
    for (std::size_t k = 0; k < latewood.size(); ++k) {
        boundaries[k].latewood_mm = latewood[k] * strip.px_mm;
    }
}

} // namespace

WoodModel ring_porous_model() {
    WoodModel model{WoodType::RingPorous, ring_porous_signal, ring_porous_marks, sequence, 0.05};
    model.measure_latewood = ring_porous_latewood;
    model.surest_edge = 0.85;
    model.cut_outdoes_rings = true;
    return model;
}

} // namespace pithward::boundary
