#include "libimaging/boundary/share_profile.h"

#include <opencv2/core/utility.hpp>

#include <algorithm>
#include <cmath>
#include <utility>

namespace pithward::boundary {

namespace {

/// Value and weight of a cell.
using WeightedCell = std::pair<float, float>;

/// Where the sum of weights reaches `share`, linear between the middles of neighbouring cells.
float value_at_share(std::vector<WeightedCell>& cells, float share) {
    std::ranges::sort(cells);
    float mass = 0.0F;
    for (const WeightedCell& cell : cells) {
        mass += cell.second;
    }
    const float goal = share * mass;
    float below = 0.0F;
    float middle = 0.0F; // Of the cell before.
    for (std::size_t k = 0; k < cells.size(); ++k) {
        const float here = below + 0.5F * cells[k].second;
        if (here >= goal) {
            if (k == 0) {
                return cells[0].first;
            }
            const float part = (goal - middle) / std::max(here - middle, 1e-12F);
            return cells[k - 1].first + part * (cells[k].first - cells[k - 1].first);
        }
        middle = here;
        below += cells[k].second;
    }
    return cells.back().first;
}

} // namespace

std::vector<float> share_profile(const FlatStrip& strip, const cv::Mat1f& values, double share) {
    std::vector<float> out(static_cast<std::size_t>(strip.columns()), std::nanf(""));
    const std::vector<float> nearness = lane_nearness(strip, 0, strip.lanes() - 1);
    cv::parallel_for_(cv::Range(0, strip.columns()), [&](const cv::Range& part) {
        std::vector<WeightedCell> cells;
        for (int c = part.start; c < part.end; ++c) {
            cells.clear();
            for (int lane = 0; lane < strip.lanes(); ++lane) {
                const float wood = strip.weight(lane, c);
                if (wood > least_wood) {
                    cells.emplace_back(values(lane, c), wood * nearness[static_cast<std::size_t>(lane)]);
                }
            }
            if (cells.size() >= least_cells) {
                out[static_cast<std::size_t>(c)] = value_at_share(cells, static_cast<float>(share));
            }
        }
    });
    carry_over_gaps(out);
    return out;
}

} // namespace pithward::boundary
