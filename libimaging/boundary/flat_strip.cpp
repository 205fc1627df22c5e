#include "libimaging/boundary/flat_strip.h"

#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/flow.h"
#include "libimaging/robust/median.h"

#include <opencv2/core/utility.hpp>

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
    cv::parallel_for_(cv::Range(0, soft.rows), [&](const cv::Range& part) {
        for (int row = part.start; row < part.end; ++row) {
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
    });
    return lengthen(weight, step, lanes.columns()).mul(solid);
}

/// The cells of one column that are wood, with their weights.
class Cells {
public:
    void gather(const cv::Mat1f& weight, const cv::Mat1f& values, const std::vector<float>& nearness, int first,
                int column) {
        values_.clear();
        weights_.clear();
        for (std::size_t k = 0; k < nearness.size(); ++k) {
            const int lane = first + static_cast<int>(k);
            const float wood = weight(lane, column);
            if (wood > least_wood) {
                values_.push_back(values(lane, column));
                weights_.push_back(wood * nearness[k]);
            }
        }
    }

    /// Weighted mean of the cells within three scaled median deviations of their median; not a number for fewer than
    /// three cells.
    [[nodiscard]] float mean_without_outliers() {
        if (values_.size() < least_cells) {
            return std::nanf("");
        }
        const float middle = median_of(values_);
        deviations_.clear();
        for (const float value : values_) {
            deviations_.push_back(std::abs(value - middle));
        }
        const float limit = 3.0F * static_cast<float>(deviation_of_median) * median_of(deviations_) + 1e-4F;
        float sum = 0.0F;
        float mass = 0.0F;
        for (std::size_t k = 0; k < values_.size(); ++k) {
            if (deviations_[k] <= limit) {
                sum += weights_[k] * values_[k];
                mass += weights_[k];
            }
        }
        return mass > 0.0F ? sum / mass : std::nanf("");
    }

private:
    [[nodiscard]] float median_of(const std::vector<float>& of) {
        sorted_ = of;
        return median_in_place(sorted_);
    }

    std::vector<float> values_;
    std::vector<float> weights_;
    std::vector<float> deviations_;
    std::vector<float> sorted_;
};

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

std::vector<float> lane_nearness(const FlatStrip& strip, int first, int last) {
    std::vector<float> nearness;
    for (int lane = first; lane <= last; ++lane) {
        const double u = strip.u(lane) / near_path_mm;
        nearness.push_back(static_cast<float>(std::exp(-0.5 * u * u)));
    }
    return nearness;
}

void carry_over_gaps(std::vector<float>& values) {
    const auto known = std::ranges::find_if(values, [](float v) { return !std::isnan(v); });
    float carried = known == values.end() ? 0.0F : *known;
    for (float& value : values) {
        carried = std::isnan(value) ? carried : value;
        value = carried;
    }
}

std::vector<float> profile(const FlatStrip& strip, const cv::Mat1f& values, int first, int last) {
    std::vector<float> out(static_cast<std::size_t>(strip.columns()), std::nanf(""));
    const std::vector<float> nearness = lane_nearness(strip, first, last);
    cv::parallel_for_(cv::Range(0, strip.columns()), [&](const cv::Range& part) {
        Cells cells;
        for (int c = part.start; c < part.end; ++c) {
            cells.gather(strip.weight, values, nearness, first, c);
            out[static_cast<std::size_t>(c)] = cells.mean_without_outliers();
        }
    });
    carry_over_gaps(out);
    return out;
}

std::vector<float> wood_share(const FlatStrip& strip) {
    const int half = std::min(strip.centre(), std::max(1, static_cast<int>(middle_mm / strip.lane_mm)));
    cv::Mat1f share;
    cv::reduce(strip.weight.rowRange(strip.centre() - half, strip.centre() + half + 1), share, 0, cv::REDUCE_AVG);
    return {share.begin(), share.end()};
}

} // namespace pithward::boundary
