#include "libimaging/boundary/flow.h"

#include "libimaging/boundary/filters.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pithward::boundary {

namespace {

/// One round of the search, in mm: smoothing of the features, and the window over which a slope is one slope.
struct Round {
    double feature;
    double window_s;
    double window_u;
};

/// Broad to fine. The last rounds follow waves of the size of a ring.
constexpr std::array rounds{
    Round{0.50, 2.0, 0.5}, Round{0.35, 2.0, 0.5}, Round{0.25, 2.0, 0.5}, Round{0.18, 1.2, 0.5},
    Round{0.12, 1.2, 0.4}, Round{0.10, 0.8, 0.3}, Round{0.08, 0.6, 0.3}, Round{0.08, 0.6, 0.3},
};
constexpr double coarse_mm = 0.04;
constexpr float greatest_turn = 0.5F; ///< A round may change the slope by this much.
constexpr double sureness = 0.05;     ///< Share of the usual gradient energy under which a slope is taken as unchanged.

/// Change of slope between lane k and k + 1, from one round.
cv::Mat1f slope_change(const cv::Mat1f& level, const cv::Mat1f& solid, const Round& round, double px_mm, double lane_mm,
                       int centre) {
    const double sigma = round.feature / px_mm;
    const cv::Mat1f soft = masked_smooth(level, solid, 0.0, sigma);
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
    cv::Mat1f change = -product / (energy + static_cast<float>(sureness * usual + 1e-12));
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

cv::Mat1f ring_flow(const Relief& relief, const Lanes& lanes) {
    const int step = std::max(1, static_cast<int>(std::lround(coarse_mm / lanes.px_mm)));
    const double px_mm = lanes.px_mm * step;
    const cv::Mat1f level = shorten(relief.level, step);
    const cv::Mat1f solid = shorten(relief.solid, step);
    cv::Mat1f flow = cv::Mat1f::zeros(level.size());
    for (const Round& round : rounds) {
        const cv::Mat1f change = slope_change(flatten(level, flow, px_mm), flatten(solid, flow, px_mm), round, px_mm,
                                              lanes.lane_mm, lanes.centre());
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
