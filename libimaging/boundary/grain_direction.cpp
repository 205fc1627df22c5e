#include "libimaging/boundary/grain_direction.h"

#include "libimaging/boundary/filters.h"
#include "libimaging/robust/median.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace pithward::boundary {

namespace {

constexpr double light_mm = 1.5;
constexpr double tensor_mm = 0.3;
constexpr float weak_share = 0.5F; ///< Share of the usual energy at which coherence is halved.

} // namespace

GrainDirection grain_direction(const cv::Mat1f& tone, double px_mm, double lane_mm, double scale_mm) {
    const cv::Mat1f soft = smooth(tone, scale_mm / lane_mm, scale_mm / px_mm);
    cv::Mat1f along = cv::Mat1f::zeros(soft.size());
    cv::Mat1f across = cv::Mat1f::zeros(soft.size());
    for (int row = 1; row + 1 < soft.rows; ++row) {
        for (int c = 1; c + 1 < soft.cols; ++c) {
            along(row, c) = (soft(row, c + 1) - soft(row, c - 1)) / static_cast<float>(2.0 * px_mm);
            across(row, c) = (soft(row + 1, c) - soft(row - 1, c)) / static_cast<float>(2.0 * lane_mm);
        }
    }
    const auto averaged = [&](const cv::Mat1f& a, const cv::Mat1f& b) {
        return smooth(a.mul(b), tensor_mm / lane_mm, tensor_mm / px_mm);
    };
    const cv::Mat1f ss = averaged(along, along);
    const cv::Mat1f uu = averaged(across, across);
    const cv::Mat1f energy = ss + uu;
    std::vector<float> energies(energy.begin(), energy.end());
    const float weak = weak_share * median_in_place(energies) + 1e-9F;
    return {(ss - uu) / (energy + weak), 2.0F * averaged(along, across) / (energy + weak)};
}

cv::Mat1f without_light(const cv::Mat1f& tone, double px_mm) {
    return tone - smooth(tone, 0.0, light_mm / px_mm);
}

} // namespace pithward::boundary
