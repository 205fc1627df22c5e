#include "libimaging/boundary/flow.h"

#include "libimaging/boundary/filters.h"

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr float greatest_turn = 0.5F; ///< A round may change the slope by this much.
constexpr float faint = 0.8F;         ///< Lines under this many standard deviations are left out.
constexpr double surround = 3.0;      ///< A line is told from its surroundings at this multiple of its breadth.

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
cv::Mat1f features(const cv::Mat1f& values, const cv::Mat1f& solid, const FlowRound& round, FlowFeature feature,
                   double px_mm, double lane_mm, int centre) {
    const double sigma = round.feature / px_mm;
    if (feature == FlowFeature::Edges) {
        return masked_smooth(values, solid, round.across / lane_mm, sigma);
    }
    return smooth(dark_lines(values, solid, round.across / lane_mm, sigma, centre), 0.1 / lane_mm, sigma);
}

/// Change of slope between lane k and k + 1, from one round.
cv::Mat1f slope_change(const cv::Mat1f& level, const cv::Mat1f& solid, const FlowRound& round, const FlowPlan& plan,
                       double px_mm, double lane_mm, int centre) {
    const cv::Mat1f soft = features(level, solid, round, plan.feature, px_mm, lane_mm, centre);
    const int pairs = level.rows - 1;
    cv::Mat1f energy(pairs, level.cols);
    cv::Mat1f product(pairs, level.cols);
    for (int k = 0; k < pairs; ++k) {
        for (int c = 0; c < level.cols; ++c) {
            const int before = std::max(0, c - 1);
            const int after = std::min(level.cols - 1, c + 1);
            const auto span = static_cast<float>((after - before) * px_mm);
            const float along =
                0.5F * (soft(k, after) - soft(k, before) + soft(k + 1, after) - soft(k + 1, before)) / span;
            const float across = (soft(k + 1, c) - soft(k, c)) / static_cast<float>(lane_mm);
            const float both = solid(k, c) * solid(k + 1, c);
            energy(k, c) = along * along * both * both;
            product(k, c) = along * across * both * both;
        }
    }
    energy = smooth(energy, round.window_u / lane_mm, round.window_s / px_mm);
    product = smooth(product, round.window_u / lane_mm, round.window_s / px_mm);
    const int half = std::min({8, centre, pairs - centre});
    const double usual = cv::mean(energy.rowRange(centre - half, centre + half))[0];
    cv::Mat1f change = -product / (energy + static_cast<float>(plan.sureness * usual + 1e-12));
    return cv::max(cv::min(change, greatest_turn), -greatest_turn);
}

/// Adds up slopes from the centre lane outward, onto what is known.
void add_slopes(const cv::Mat1f& change, float lane_mm, int centre, cv::Mat1f& flow) {
    for (int c = 0; c < flow.cols; ++c) {
        float moved = 0.0F;
        for (int k = centre; k + 1 < flow.rows; ++k) {
            moved += change(k, c) * lane_mm;
            flow(k + 1, c) += moved;
        }
        moved = 0.0F;
        for (int k = centre; k > 0; --k) {
            moved -= change(k - 1, c) * lane_mm;
            flow(k - 1, c) += moved;
        }
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
        const cv::Mat1f change = slope_change(flatten(short_values, flow, px_mm), flatten(short_solid, flow, px_mm),
                                              round, plan, px_mm, lanes.lane_mm, lanes.centre());
        add_slopes(change, static_cast<float>(lanes.lane_mm), lanes.centre(), flow);
    }
    return lengthen(flow, step, lanes.columns());
}

cv::Mat1f flatten(const cv::Mat1f& values, const cv::Mat1f& flow_mm, double px_mm) {
    cv::Mat1f flat(values.size());
    for (int row = 0; row < values.rows; ++row) {
        const float* from = values[row];
        for (int column = 0; column < values.cols; ++column) {
            flat(row, column) = sample(from, values.cols, column + flow_mm(row, column) / px_mm);
        }
    }
    return flat;
}

} // namespace pithward::boundary
