#include "libimaging/boundary/flat_strip.h"

#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/flow.h"

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double agree_mm = 2.5;  ///< Lanes are compared over windows of about this standard deviation.
constexpr double middle_mm = 0.7; ///< Half breadth of the lanes that others are compared with.
constexpr double coarse_mm = 0.04;
constexpr double near_path_mm = 1.5; ///< Lanes further from the path than this count for less in a profile.

/// How surely each lane belongs to the core: its correlation with the middle lanes, over a sliding window.
cv::Mat1f lane_weights(const cv::Mat1f& traced, const cv::Mat1f& solid, const Lanes& lanes, const Signal& signal) {
    const int step = std::max(1, static_cast<int>(std::lround(coarse_mm / lanes.px_mm)));
    const double px_mm = lanes.px_mm * step;
    const cv::Mat1f short_solid = shorten(solid, step);
    const cv::Mat1f soft = masked_smooth(shorten(traced, step), short_solid, signal.alike_across_mm / lanes.lane_mm,
                                         signal.alike_along_mm / px_mm);
    const int half = std::min(lanes.centre(), std::max(1, static_cast<int>(middle_mm / lanes.lane_mm)));
    cv::Mat1f middle;
    cv::reduce(soft.rowRange(lanes.centre() - half, lanes.centre() + half + 1), middle, 0, cv::REDUCE_AVG);
    const cv::Mat1f power = smooth(middle.mul(middle), 0.0, agree_mm / px_mm);
    cv::Mat1f weight(soft.size());
    for (int row = 0; row < soft.rows; ++row) {
        const cv::Mat1f own = soft.row(row);
        const cv::Mat1f both = smooth(own.mul(middle), 0.0, agree_mm / px_mm);
        const cv::Mat1f mine = smooth(own.mul(own), 0.0, agree_mm / px_mm);
        const bool inner = std::abs(row - lanes.centre()) <= 2;
        for (int c = 0; c < soft.cols; ++c) {
            const float r = both(0, c) / std::sqrt(mine(0, c) * power(0, c) + 1e-9F);
            // The path itself is taken to run through wood: a path with none is refused elsewhere.
            weight(row, c) =
                inner ? 1.0F : std::clamp((r - signal.strange) / (signal.familiar - signal.strange), 0.0F, 1.0F);
        }
    }
    return lengthen(weight, step, lanes.columns()).mul(solid);
}

} // namespace

FlatStrip flat_strip(const Lanes& lanes, const Relief& relief, const Signal& signal, double path_mm, const Work& work) {
    FlatStrip strip;
    strip.start_mm = lanes.start_mm;
    strip.px_mm = lanes.px_mm;
    strip.lane_mm = lanes.lane_mm;
    strip.path_mm = path_mm;
    strip.flow_mm = ring_flow(signal.traced, relief.solid, lanes, signal.plan);
    work.report(0.6);
    strip.tone = flatten(relief.tone, strip.flow_mm, lanes.px_mm);
    const bool same = signal.read.data == relief.tone.data;
    strip.signal = same ? strip.tone : flatten(signal.read, strip.flow_mm, lanes.px_mm);
    strip.weight = lane_weights(flatten(signal.traced, strip.flow_mm, lanes.px_mm),
                                flatten(relief.solid, strip.flow_mm, lanes.px_mm), lanes, signal);
    work.report(1.0);
    return strip;
}

std::vector<float> profile(const FlatStrip& strip, const cv::Mat1f& values, int first, int last) {
    std::vector<float> out(static_cast<std::size_t>(strip.columns()), std::nanf(""));
    std::vector<float> cells;
    std::vector<float> deviations;
    std::vector<float> nearness;
    for (int lane = first; lane <= last; ++lane) {
        const double u = strip.u(lane) / near_path_mm;
        nearness.push_back(static_cast<float>(std::exp(-0.5 * u * u)));
    }
    for (int c = 0; c < strip.columns(); ++c) {
        cells.clear();
        for (int lane = first; lane <= last; ++lane) {
            if (strip.weight(lane, c) > 0.3F) {
                cells.push_back(values(lane, c));
            }
        }
        if (cells.size() < 3) {
            continue;
        }
        const auto middle = cells.begin() + static_cast<std::ptrdiff_t>(cells.size() / 2);
        std::nth_element(cells.begin(), middle, cells.end());
        const float median = *middle;
        deviations.clear();
        for (const float cell : cells) {
            deviations.push_back(std::abs(cell - median));
        }
        const auto half = deviations.begin() + static_cast<std::ptrdiff_t>(deviations.size() / 2);
        std::nth_element(deviations.begin(), half, deviations.end());
        const float limit = 3.0F * 1.4826F * *half + 1e-4F;
        float sum = 0.0F;
        float mass = 0.0F;
        for (int lane = first; lane <= last; ++lane) {
            const float value = values(lane, c);
            if (strip.weight(lane, c) > 0.3F && std::abs(value - median) <= limit) {
                const float w = strip.weight(lane, c) * nearness[static_cast<std::size_t>(lane - first)];
                sum += w * value;
                mass += w;
            }
        }
        if (mass > 0.0F) {
            out[static_cast<std::size_t>(c)] = sum / mass;
        }
    }
    // Columns without wood repeat the last wood before them, or the first after them.
    const auto known = std::ranges::find_if(out, [](float v) { return !std::isnan(v); });
    float carried = known == out.end() ? 0.0F : *known;
    for (float& value : out) {
        carried = std::isnan(value) ? carried : value;
        value = carried;
    }
    return out;
}

std::vector<float> wood_share(const FlatStrip& strip) {
    const int half = std::min(strip.centre(), std::max(1, static_cast<int>(middle_mm / strip.lane_mm)));
    cv::Mat1f share;
    cv::reduce(strip.weight.rowRange(strip.centre() - half, strip.centre() + half + 1), share, 0, cv::REDUCE_AVG);
    return {share.begin(), share.end()};
}

} // namespace pithward::boundary
