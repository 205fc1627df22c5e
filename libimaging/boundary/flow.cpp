#include "libimaging/boundary/flow.h"

#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/flow_follow.h"

#include <opencv2/core/utility.hpp>

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr float greatest_turn = 0.5F;     ///< A round may change the slope by this much.
constexpr float faint = 0.8F;             ///< Lines under this many standard deviations are left out.
constexpr double broad_window = 4.0;      ///< A round looks from afar over a window this much longer.
constexpr double columns_a_feature = 2.8; ///< At least so many columns to the breadth (sd) of a feature.
constexpr double surround = 3.0;          ///< A line is told from its surroundings at this multiple of its breadth.

/// Thin dark lines, the stronger the higher; 0 elsewhere.
cv::Mat1f dark_lines(const cv::Mat1f& values, const cv::Mat1f& solid, double sigma_lane, double sigma_s, int centre) {
    const cv::Mat1f fine = masked_smooth(values, solid, sigma_lane, sigma_s);
    const cv::Mat1f broad = masked_smooth(values, solid, sigma_lane, surround * sigma_s);
    cv::Mat1f line = (broad - fine).mul(solid);
    const int half = std::min(15, centre);
    cv::Scalar mean;
    cv::Scalar deviation;
    cv::meanStdDev(line.rowRange(centre - half, centre + half + 1), mean, deviation);
    line = line / std::max(deviation[0], 1e-9);
    for (float& value : line) {
        const float strength = std::clamp(value - faint, 0.0F, 4.0F);
        value = strength * std::sqrt(strength);
    }
    return line;
}

/// The values whose slopes a round looks at.
cv::Mat1f features(const cv::Mat1f& values, const cv::Mat1f& solid, double along_mm, double across_mm,
                   FlowFeature feature, double px_mm, double lane_mm, int centre) {
    const double sigma = along_mm / px_mm;
    if (feature == FlowFeature::Edges) {
        return masked_smooth(values, solid, across_mm / lane_mm, sigma);
    }
    return smooth(dark_lines(values, solid, across_mm / lane_mm, sigma, centre), 0.1 / lane_mm, sigma);
}

/// Gradients of one pair of lanes: along the path squared, and along times across.
void gradients_of_pair(const cv::Mat1f& soft, const cv::Mat1f& solid, int k, double px_mm, double lane_mm,
                       bool past_rays, float* energy, float* product) {
    const float* upper = soft[k];
    const float* lower = soft[k + 1];
    const float* upper_solid = solid[k];
    const float* lower_solid = solid[k + 1];
    const int last = soft.cols - 1;
    for (int c = 0; c <= last; ++c) {
        const int before = std::max(0, c - 1);
        const int after = std::min(last, c + 1);
        const auto span = static_cast<float>((after - before) * px_mm);
        const float along = 0.5F * (upper[after] - upper[before] + lower[after] - lower[before]) / span;
        const float across = (lower[c] - upper[c]) / static_cast<float>(lane_mm);
        // What runs along the path (rays, cracks, scratches) says nothing of the rings, so it weighs little.
        const float steep = along * along;
        const float ringlike = past_rays ? steep / (steep + across * across + 1e-12F) : 1.0F;
        const float weight = upper_solid[c] * lower_solid[c] * ringlike;
        energy[c] = steep * weight;
        product[c] = along * across * weight;
    }
}

/// Sums over the round's window, with a share of a longer one: a faint ring gets the slope of its neighbours.
cv::Mat1f over_window(const cv::Mat1f& values, const FlowRound& round, double px_mm, double lane_mm) {
    const cv::Mat1f near = smooth(values, round.window_u / lane_mm, round.window_s / px_mm);
    return round.from_afar > 0.0 ? near + round.from_afar * smooth(near, 0.0, broad_window * round.window_s / px_mm)
                                 : near;
}

/// Change of slope between lane k and k + 1, from one round.
cv::Mat1f slope_change(const cv::Mat1f& level, const cv::Mat1f& solid, const FlowRound& round, const FlowPlan& plan,
                       double px_mm, double lane_mm, int centre) {
    const cv::Mat1f soft = features(level, solid, round.feature, round.across, plan.feature, px_mm, lane_mm, centre);
    const int pairs = level.rows - 1;
    cv::Mat1f energy(pairs, level.cols);
    cv::Mat1f product(pairs, level.cols);
    cv::parallel_for_(cv::Range(0, pairs), [&](const cv::Range& part) {
        for (int k = part.start; k < part.end; ++k) {
            gradients_of_pair(soft, solid, k, px_mm, lane_mm, plan.past_rays, energy[k], product[k]);
        }
    });
    energy = over_window(energy, round, px_mm, lane_mm);
    product = over_window(product, round, px_mm, lane_mm);
    const int half = std::min({8, centre, pairs - centre});
    const double usual = cv::mean(energy.rowRange(centre - half, centre + half))[0];
    cv::Mat1f change = -product / (energy + static_cast<float>(plan.sureness * usual + 1e-12));
    return cv::max(cv::min(change, greatest_turn), -greatest_turn);
}

/// Adds up slopes from the centre lane outward, onto what is known.
void add_slopes(const cv::Mat1f& change, float lane_mm, int centre, cv::Mat1f& flow) {
    cv::Mat1f moved = cv::Mat1f::zeros(1, flow.cols);
    for (int k = centre; k + 1 < flow.rows; ++k) {
        moved += change.row(k) * lane_mm;
        flow.row(k + 1) += moved;
    }
    moved.setTo(0.0F);
    for (int k = centre; k > 0; --k) {
        moved -= change.row(k - 1) * lane_mm;
        flow.row(k - 1) += moved;
    }
}

} // namespace

cv::Mat1f ring_flow(const cv::Mat1f& values, const cv::Mat1f& solid, const Lanes& lanes, const FlowPlan& plan) {
    const int step = std::max(1, static_cast<int>(std::lround(plan.step_mm / lanes.px_mm)));
    const double px_mm = lanes.px_mm * step;
    const cv::Mat1f short_values = shorten(values, step);
    const cv::Mat1f short_solid = shorten(solid, step);
    cv::Mat1f flow = cv::Mat1f::zeros(short_values.size());
    for (const FlowRound& round : plan.rounds) {
        // Broad features are sought on a strip that is as much shorter.
        const int coarser = std::max(1, static_cast<int>(round.feature / (columns_a_feature * px_mm)));
        cv::Mat1f coarse = shorten(flow, coarser);
        const cv::Mat1f known = coarse.clone();
        const double coarse_px_mm = px_mm * coarser;
        const cv::Mat1f change = slope_change(flatten(shorten(short_values, coarser), coarse, coarse_px_mm),
                                              flatten(shorten(short_solid, coarser), coarse, coarse_px_mm), round, plan,
                                              coarse_px_mm, lanes.lane_mm, lanes.centre());
        add_slopes(change, static_cast<float>(lanes.lane_mm), lanes.centre(), coarse);
        flow += lengthen(coarse - known, coarser, flow.cols);
    }
    for (const FollowRound& round : plan.follow) {
        const cv::Mat1f flat_solid = flatten(short_solid, flow, px_mm);
        const cv::Mat1f soft = features(flatten(short_values, flow, px_mm), flat_solid, round.feature, round.across,
                                        plan.feature, px_mm, lanes.lane_mm, lanes.centre());
        flow += follow_rings(soft, flat_solid, px_mm, lanes.lane_mm, round);
    }
    return lengthen(flow, step, lanes.columns());
}

} // namespace pithward::boundary
