#include "libimaging/boundary/relief.h"

#include "libimaging/boundary/filters.h"
#include "libimaging/robust/median.h"
#include "libimaging/scan/beside.h"

#include <opencv2/core/utility.hpp>
#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

namespace pithward::boundary {

namespace {

constexpr float tone_floor = 0.02F;      ///< Keeps the logarithm of black finite.
constexpr double background_mm = 1.5;    ///< Gradients of light and stain are broader than this.
constexpr double contrast_mm = 3.0;      ///< Contrast is evened out over this length ...
constexpr double contrast_lane_mm = 0.5; ///< ... and breadth.
constexpr double sure_breadth_mm = 0.8;  ///< Half breadth that is surely wood when the path is right.
constexpr float shadow = 0.42F;          ///< Darker than this share of the local wood may be no wood ...
constexpr float below_latewood = 0.6F;   ///< ... when it is also darker than this share of the darkest latewood.
constexpr double latewood_share = 0.04;  ///< Share of the middle lanes taken as darkest latewood.
constexpr double broad_step_mm = 0.04;   ///< Step at which broad fields are computed.

int middle_lanes(const Lanes& lanes) {
    return std::min(lanes.centre(), std::max(1, static_cast<int>(sure_breadth_mm / lanes.lane_mm)));
}

/// What is common to neighbouring lanes, and what is not, between all pairs of channels.
struct Agreement {
    cv::Matx33d signal = cv::Matx33d::zeros();
    cv::Matx33d noise = cv::Matx33d::zeros();
};

Agreement agreement_of(const Lanes& lanes, int step) {
    const int half = middle_lanes(lanes);
    const cv::Range middle(lanes.centre() - half, lanes.centre() + half + 1);
    std::array<cv::Mat1f, 3> fine;
    cv::parallel_for_(cv::Range(0, 3), [&](const cv::Range& part) {
        for (auto c = static_cast<std::size_t>(part.start); c < static_cast<std::size_t>(part.end); ++c) {
            const cv::Mat1f tone = tone_of(shorten(lanes.rgb[c].rowRange(middle), step));
            fine[c] = tone - smooth(tone, 0.0, background_mm / (lanes.px_mm * step));
        }
    });
    Agreement found;
    for (int i = 0; i < 3; ++i) {
        for (int j = 0; j < 3; ++j) {
            const cv::Mat1f& a = fine[static_cast<std::size_t>(i)];
            const cv::Mat1f& b = fine[static_cast<std::size_t>(j)];
            const int last = a.rows - 1;
            const cv::Mat1f upper_a = a.rowRange(0, last);
            const cv::Mat1f lower_a = a.rowRange(1, last + 1);
            const cv::Mat1f upper_b = b.rowRange(0, last);
            const cv::Mat1f lower_b = b.rowRange(1, last + 1);
            found.signal(i, j) = 0.5 * (upper_a.dot(lower_b) + lower_a.dot(upper_b));
            found.noise(i, j) = 0.5 * cv::Mat1f(upper_a - lower_a).dot(upper_b - lower_b);
        }
    }
    return found;
}

std::array<float, 3> best_mix(const Lanes& lanes, int step) {
    const Agreement agreement = agreement_of(lanes, step);
    constexpr int parts = 10;
    double best = -1.0;
    cv::Vec3d mix(1.0 / 3.0, 1.0 / 3.0, 1.0 / 3.0);
    for (int red = 0; red <= parts; ++red) {
        for (int green = 0; green + red <= parts; ++green) {
            const cv::Vec3d w(red / double(parts), green / double(parts), (parts - red - green) / double(parts));
            const double signal = w.dot(agreement.signal * w);
            const double noise = w.dot(agreement.noise * w);
            const double ratio = signal / std::max(noise, 1e-12);
            if (ratio > best) {
                best = ratio;
                mix = w;
            }
        }
    }
    return {static_cast<float>(mix[0]), static_cast<float>(mix[1]), static_cast<float>(mix[2])};
}

cv::Mat1f mixed(const Lanes& lanes, const std::array<float, 3>& mix) {
    cv::Mat1f brightness(lanes.rgb[0].size());
    cv::parallel_for_(cv::Range(0, brightness.rows), [&](const cv::Range& part) {
        cv::Mat1f rows = brightness.rowRange(part);
        rows = lanes.rgb[0].rowRange(part) * mix[0] + lanes.rgb[1].rowRange(part) * mix[1] +
               lanes.rgb[2].rowRange(part) * mix[2];
    });
    return brightness;
}

/// Brightness of the wood near each column: a running median of the middle lanes' median.
cv::Mat1f wood_brightness(const cv::Mat1f& brightness, const Lanes& lanes, int step) {
    const int half = middle_lanes(lanes);
    const cv::Mat1f middle = shorten(brightness.rowRange(lanes.centre() - half, lanes.centre() + half + 1), step);
    std::vector<float> medians(static_cast<std::size_t>(middle.cols));
    std::vector<float> column(static_cast<std::size_t>(middle.rows));
    for (int c = 0; c < middle.cols; ++c) {
        for (int r = 0; r < middle.rows; ++r) {
            column[static_cast<std::size_t>(r)] = middle(r, c);
        }
        medians[static_cast<std::size_t>(c)] = median_in_place(column);
    }
    // A running median at a step of its own: gaps shorter than half the window leave no trace.
    const int half_window = std::max(1, static_cast<int>(3.0 / (lanes.px_mm * step)));
    const int hop = std::max(1, half_window / 15);
    std::vector<float> window;
    cv::Mat1f coarse(1, (middle.cols + hop - 1) / hop);
    for (int k = 0; k < coarse.cols; ++k) {
        const int from = std::max(0, k * hop - half_window);
        const int to = std::min(middle.cols, k * hop + half_window + 1);
        window.assign(medians.begin() + from, medians.begin() + to);
        coarse(0, k) = median_in_place(window);
    }
    return lengthen(coarse, hop * step, brightness.cols);
}

/// Brightness of the darkest latewood: a low quantile of the middle lanes against the wood around.
float darkest_latewood(const cv::Mat1f& brightness, const cv::Mat1f& wood, const Lanes& lanes, int step) {
    const int half = middle_lanes(lanes);
    std::vector<float> shares;
    for (int row = lanes.centre() - half; row <= lanes.centre() + half; ++row) {
        for (int column = 0; column < brightness.cols; column += step) {
            const double s = lanes.s(column);
            if (s > 0.0 && s < lanes.s(brightness.cols - 1) + lanes.start_mm) {
                shares.push_back(brightness(row, column) / std::max(wood(0, column), 1e-4F));
            }
        }
    }
    if (shares.empty()) {
        return shadow;
    }
    const auto low = shares.begin() + static_cast<std::ptrdiff_t>(latewood_share * static_cast<double>(shares.size()));
    std::nth_element(shares.begin(), low, shares.end());
    return *low;
}

cv::Mat1f solid_wood(const cv::Mat1f& brightness, const Lanes& lanes, int step) {
    const cv::Mat1f wood = wood_brightness(brightness, lanes, step);
    const float limit = std::min(shadow, below_latewood * darkest_latewood(brightness, wood, lanes, step));
    cv::Mat1b dark(brightness.size());
    for (int row = 0; row < brightness.rows; ++row) {
        for (int column = 0; column < brightness.cols; ++column) {
            dark(row, column) = brightness(row, column) < limit * wood(0, column) ? 255 : 0;
        }
    }
    const int margin = 2 * std::max(1, static_cast<int>(0.05 / lanes.px_mm)) + 1;
    cv::dilate(dark, dark, cv::Mat1b::ones(3, margin));
    cv::Mat1f solid;
    cv::Mat(~dark).convertTo(solid, CV_32F, 1.0 / 255.0);
    return solid;
}

} // namespace

cv::Mat1f tone_of(const cv::Mat1f& brightness) {
    cv::Mat1f tone(brightness.size());
    cv::parallel_for_(cv::Range(0, tone.rows), [&](const cv::Range& part) {
        cv::Mat1f rows = tone.rowRange(part);
        cv::log(brightness.rowRange(part) + tone_floor, rows);
    });
    return tone;
}

Relief relief_of(const Lanes& lanes) {
    const int step = std::max(1, static_cast<int>(std::lround(broad_step_mm / lanes.px_mm)));
    const double coarse = lanes.px_mm * step;
    Relief relief;
    relief.mix = best_mix(lanes, step);
    const cv::Mat1f brightness = mixed(lanes, relief.mix);
    auto solid_all = beside([&] { return solid_wood(brightness, lanes, step); });
    relief.tone = tone_of(brightness);
    relief.solid = solid_all.get();

    const cv::Mat1f solid = shorten(relief.solid, step);
    const cv::Mat1f tone = shorten(relief.tone, step);
    const cv::Mat1f background = masked_smooth(tone, solid, 0.0, background_mm / coarse);
    const cv::Mat1f above = (tone - background).mul(solid);
    const cv::Mat1f variance =
        masked_smooth(above.mul(above), solid, contrast_lane_mm / lanes.lane_mm, contrast_mm / coarse);
    cv::Mat1f contrast;
    cv::sqrt(variance + 1e-6F, contrast);
    // One contrast for all lanes: that of the middle, so that a mount's grain is not blown up to look like rings.
    const int half = middle_lanes(lanes);
    cv::Mat1f middle;
    cv::reduce(contrast.rowRange(lanes.centre() - half, lanes.centre() + half + 1), middle, 0, cv::REDUCE_AVG);

    const cv::Mat1f ground = lengthen(background, step, lanes.columns());
    const cv::Mat1f unit = lengthen(middle, step, lanes.columns());
    relief.level.create(relief.tone.size());
    cv::parallel_for_(cv::Range(0, relief.level.rows), [&](const cv::Range& part) {
        for (int row = part.start; row < part.end; ++row) {
            for (int c = 0; c < relief.level.cols; ++c) {
                const float level = (relief.tone(row, c) - ground(row, c)) / unit(0, c);
                relief.level(row, c) = std::clamp(level, -3.0F, 3.0F) * relief.solid(row, c);
            }
        }
    });
    return relief;
}

} // namespace pithward::boundary
