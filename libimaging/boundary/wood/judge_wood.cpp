#include "libimaging/boundary/wood/judge_wood.h"

#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/relief.h"
#include "libimaging/boundary/wood/wood_model.h"

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double judging_px_per_mm = 24.0;
constexpr double half_breadth_mm = 1.2;
constexpr double ends = 0.1;          ///< Share left out at each end: bark, and what lies beyond the core.
constexpr double enough_mm = 120.0;   ///< The grain of so much wood tells its kind.
constexpr double ground_mm = 0.5;     ///< Slower changes say nothing of the grain.
constexpr double conifer_from = 0.70; ///< Correlation of lanes half a millimetre apart.
constexpr double conifer_steepness = 20.0;
/// Log odds of large vessels: constant, weight of the logarithm of the contrast of things their size, and of the
/// likeness of the grain to itself a tenth of a millimetre on. Fitted to rendered hardwood cores.
constexpr double vessel_constant = 12.5;
constexpr double vessel_contrast = 4.6;
constexpr double vessel_likeness = 2.1;

double correlation(const cv::Mat1f& a, const cv::Mat1f& b) {
    const cv::Mat1f x = a - cv::mean(a)[0];
    const cv::Mat1f y = b - cv::mean(b)[0];
    return x.dot(y) / std::sqrt(x.dot(x) * y.dot(y) + 1e-12);
}

/// Mean correlation of lanes `apart` mm apart.
double lane_correlation(const cv::Mat1f& grain, double apart_mm, double lane_mm) {
    const int apart = std::max(1, static_cast<int>(std::lround(apart_mm / lane_mm)));
    double sum = 0.0;
    int count = 0;
    for (int lane = 0; lane + apart < grain.rows; ++lane) {
        sum += correlation(grain.row(lane), grain.row(lane + apart));
        ++count;
    }
    return count > 0 ? sum / count : 0.0;
}

cv::Mat1f grain_of(const cv::Mat1f& tone, double px_mm) {
    return tone - smooth(tone, 0.0, ground_mm / px_mm);
}

/// Log odds that the grain consists of vessels a fifth to a third of a millimetre wide.
double large_vessel_log_odds(const cv::Mat1f& grain, double px_mm, double lane_mm) {
    cv::Scalar mean;
    cv::Scalar deviation;
    cv::meanStdDev(smooth(grain, 0.1 / lane_mm, 0.08 / px_mm), mean, deviation);
    const int lag = std::max(1, static_cast<int>(std::lround(0.1 / px_mm)));
    const double likeness =
        correlation(grain.colRange(0, grain.cols - lag).clone(), grain.colRange(lag, grain.cols).clone());
    return vessel_constant + vessel_contrast * std::log(std::max(deviation[0], 1e-4)) + vessel_likeness * likeness;
}

double logistic(double x) {
    return 1.0 / (1.0 + std::exp(-x));
}

} // namespace

WoodJudgement judge_wood(const Lanes& lanes) {
    const double length_mm = lanes.columns() * lanes.px_mm;
    const double left_out = std::max(ends, 0.5 * (1.0 - enough_mm / length_mm));
    const Lanes coarse = middle_of(coarser(without_ends(lanes, left_out), judging_px_per_mm), half_breadth_mm);
    const Relief relief = relief_of(coarse);
    const double length = coarse.s(coarse.columns() - 1);
    const FlatStrip strip = flat_strip(coarse, relief, wood_model(WoodType::Conifer).signal(relief, coarse), length);
    const double alike = lane_correlation(grain_of(strip.tone, coarse.px_mm), 0.5, coarse.lane_mm);
    const double conifer = logistic(conifer_steepness * (alike - conifer_from));
    if (conifer >= 0.5) {
        return {WoodType::Conifer, conifer, "the rings show the same profile across the whole core"};
    }
    const cv::Mat1f grain = grain_of(relief.tone, coarse.px_mm).mul(relief.solid);
    const double large = logistic(large_vessel_log_odds(grain, coarse.px_mm, coarse.lane_mm));
    if (large >= 0.5) {
        return {WoodType::RingPorous, (1.0 - conifer) * large, "the grain consists of large vessels"};
    }
    return {WoodType::DiffusePorous, (1.0 - conifer) * (1.0 - large), "the grain consists of small vessels"};
}

} // namespace pithward::boundary
