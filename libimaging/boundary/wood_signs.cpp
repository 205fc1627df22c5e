#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/grain_direction.h"
#include "libimaging/boundary/why_no_wood.h"
#include "libimaging/robust/median.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <complex>
#include <span>
#include <vector>

namespace pithward::boundary {

namespace {

constexpr double looking_px_per_mm = 24.0;
constexpr double beside_mm = 1.6;
constexpr std::array grain_scales{0.12, 0.3};
constexpr double stretch_mm = 3.0;   ///< Rings keep their direction so far.
constexpr double side_from_mm = 0.4; ///< A side of the path, for their agreement.
constexpr double side_to_mm = 1.4;
constexpr double middle_half_mm = 0.8;
constexpr double light_length_mm = 1.5;
constexpr double slow_mm = 1.0; ///< Slower changes say nothing of rings.
constexpr double least_period_mm = 0.25;
constexpr double greatest_period_mm = 6.0;
constexpr double tone_step = 0.02; ///< Relative difference within which tones are one.
constexpr double ink = 0.8;        ///< Print is darker than its paper by this, as a logarithm.
constexpr double ink_share = 0.02;
constexpr double change_mm = 0.03;
constexpr double steep_tenth = 0.1;

using Line = std::vector<float>;

double product(std::span<const float> a, std::span<const float> b) {
    double sum = 0.0;
    for (std::size_t i = 0; i < std::min(a.size(), b.size()); ++i) {
        sum += static_cast<double>(a[i]) * static_cast<double>(b[i]);
    }
    return sum;
}

/// Mean of some lanes without what changes slowly.
Line quick_part(const cv::Mat1f& lanes, double px_mm, double blur_mm) {
    cv::Mat1f mean;
    cv::reduce(lanes, mean, 0, cv::REDUCE_AVG);
    const cv::Mat1f soft = smooth(mean, 0.0, blur_mm / px_mm);
    const cv::Mat1f quick = soft - smooth(soft, 0.0, slow_mm / px_mm);
    return {quick.begin(), quick.end()};
}

/// Means of the directions, weighted by coherence: of twice the angle to the path, of four times it, and the size of
/// the latter in short stretches, whichever way their lines run.
struct MeanDirection {
    double twice = 0.0;
    double four_times = 0.0;
    double in_stretches = 0.0;
};

MeanDirection mean_direction(const cv::Mat1f& tone, double px_mm, double lane_mm) {
    const int stretch = std::max(1, static_cast<int>(std::lround(stretch_mm / px_mm)));
    double size = 1e-9;
    MeanDirection sum;
    for (const double scale : grain_scales) {
        const GrainDirection grain = grain_direction(tone, px_mm, lane_mm, scale);
        for (int first = 0; first < tone.cols; first += stretch) {
            const cv::Range columns(first, std::min(tone.cols, first + stretch));
            std::complex<double> four_times;
            cv::Mat1f cosine = grain.cosine.colRange(columns);
            cv::Mat1f sine = grain.sine.colRange(columns);
            auto im = sine.begin();
            for (const float re : cosine) {
                const std::complex<double> twice(re, *im++);
                const double length = std::abs(twice) + 1e-12;
                sum.twice += twice.real();
                four_times += twice * twice / length;
                size += length;
            }
            sum.four_times += four_times.real();
            sum.in_stretches += std::abs(four_times);
        }
    }
    return {sum.twice / size, sum.four_times / size, sum.in_stretches / size};
}

/// Correlation of two profiles of mean 0.
double likeness(std::span<const float> a, std::span<const float> b) {
    return product(a, b) / std::sqrt(product(a, a) * product(b, b) + 1e-12);
}

double regularity(std::span<const float> all, double px_mm) {
    const int n = static_cast<int>(all.size());
    const double power = product(all, all) / n + 1e-12;
    const int longest = std::min(n / 4, static_cast<int>(3.1 * greatest_period_mm / px_mm));
    std::vector<double> correlation;
    for (int lag = 0; lag <= longest; ++lag) {
        correlation.push_back(product(all, all.subspan(static_cast<std::size_t>(lag))) / (n - lag) / power);
    }
    double best = 0.0;
    for (int lag = std::max(2, static_cast<int>(least_period_mm / px_mm)); 3 * lag < longest; ++lag) {
        double least = 1.0;
        for (int times = 1; times <= 3; ++times) {
            const int slack = std::max(1, times * lag / 50);
            const auto middle = correlation.begin() + static_cast<std::ptrdiff_t>(times) * lag;
            least = std::min(least, *std::max_element(middle - slack, std::min(middle + slack + 1, correlation.end())));
        }
        // A peak of its own, not the flank of the one at no shift.
        const auto at = static_cast<std::size_t>(lag);
        if (correlation[at] >= correlation[at - 1] && correlation[at] >= correlation[at + 1]) {
            best = std::max(best, least);
        }
    }
    return best;
}

/// Median over all cells of how far they are from the median of their column.
double difference_of_lanes(const cv::Mat1f& tone) {
    std::vector<float> column(static_cast<std::size_t>(tone.rows));
    std::vector<float> away;
    away.reserve(tone.total());
    for (int c = 0; c < tone.cols; ++c) {
        for (int r = 0; r < tone.rows; ++r) {
            column[static_cast<std::size_t>(r)] = tone(r, c);
        }
        const float middle = median_in_place(column);
        for (const float value : column) {
            away.push_back(std::abs(value - middle));
        }
    }
    return static_cast<double>(median_in_place(away));
}

double paper_share(const cv::Mat1f& tone) {
    std::vector<float> tones(tone.begin(), tone.end());
    std::ranges::sort(tones);
    std::size_t most = 0;
    float paper = tones.front();
    for (std::size_t low = 0, high = 0; low < tones.size(); ++low) {
        while (high < tones.size() && tones[high] - tones[low] < 2.0F * static_cast<float>(tone_step)) {
            ++high;
        }
        if (high - low > most) {
            most = high - low;
            paper = tones[low];
        }
    }
    const float dark = tones[static_cast<std::size_t>(ink_share * static_cast<double>(tones.size()))];
    return paper - dark > static_cast<float>(ink) ? static_cast<double>(most) / static_cast<double>(tones.size()) : 0.0;
}

/// Sum of the signs of the steepest tenth of the changes, in standard deviations of chance; positive for falls.
double falls_over_chance(std::span<const float> line) {
    std::vector<double> changes;
    double extreme = 0.0;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const double g = static_cast<double>(line[i + 1] - line[i]);
        if (g * extreme < 0.0) {
            changes.push_back(extreme);
            extreme = g;
        } else if (std::abs(g) > std::abs(extreme)) {
            extreme = g;
        }
    }
    const auto steep =
        std::max<std::size_t>(4, static_cast<std::size_t>(steep_tenth * static_cast<double>(changes.size())));
    if (changes.size() < steep) {
        return 0.0;
    }
    std::ranges::sort(changes, [](double a, double b) { return std::abs(a) > std::abs(b); });
    double falls = 0.0;
    for (std::size_t i = 0; i < steep; ++i) {
        falls += changes[i] < 0.0 ? 1.0 : -1.0;
    }
    return falls / std::sqrt(static_cast<double>(steep));
}

/// Of the whole line, or of its halves against each other: past the pith the sign turns over.
double one_sidedness(const Line& line) {
    const std::span<const float> all(line);
    const double before = falls_over_chance(all.first(all.size() / 2));
    const double after = falls_over_chance(all.last(all.size() / 2));
    return std::max(std::abs(falls_over_chance(all)), std::abs(before - after) / std::sqrt(2.0));
}

} // namespace

WoodSigns wood_signs(const Lanes& lanes, const Relief& relief, const FlatStrip& strip) {
    const int step = std::max(1, static_cast<int>(std::lround(1.0 / (looking_px_per_mm * lanes.px_mm))));
    const double px_mm = lanes.px_mm * step;
    const int first = std::clamp(static_cast<int>(strip.column(0.0)) / step, 0, lanes.columns() / step);
    const int last = std::clamp(static_cast<int>(strip.column(strip.path_mm)) / step, first, lanes.columns() / step);
    const auto part = [&](const cv::Mat1f& values, double from_mm, double to_mm) {
        const int from = std::max(0, lanes.centre() + static_cast<int>(std::lround(from_mm / lanes.lane_mm)));
        const int to = std::min(values.rows, lanes.centre() + static_cast<int>(std::lround(to_mm / lanes.lane_mm)) + 1);
        return cv::Mat1f(shorten(values.rowRange(from, std::max(from + 1, to)), step).colRange(first, last));
    };
    WoodSigns signs;
    if (last - first < 8) {
        return signs;
    }
    const cv::Mat1f tone = part(relief.tone, -beside_mm, beside_mm);
    // Light is taken off both ways here: what runs along the path must stay to be seen.
    const cv::Mat1f even = tone - smooth(tone, light_length_mm / lanes.lane_mm, light_length_mm / px_mm);
    signs.across = mean_direction(even, px_mm, lanes.lane_mm).twice;
    const MeanDirection lines = mean_direction(without_light(tone, px_mm), px_mm, lanes.lane_mm);
    signs.aligned = lines.four_times;
    signs.one_way = lines.in_stretches;
    signs.paper = paper_share(tone);
    const auto sides_agree = [&](const cv::Mat1f& values) {
        return likeness(quick_part(part(values, -side_to_mm, -side_from_mm), px_mm, 0.1),
                        quick_part(part(values, side_from_mm, side_to_mm), px_mm, 0.1));
    };
    // Vessels of which some are chalked cancel out in the tone, and show in what the wood is read from.
    signs.agreement = std::max(sides_agree(strip.tone), sides_agree(strip.signal));
    const Line middle = quick_part(part(strip.tone, -middle_half_mm, middle_half_mm), px_mm, 0.05);
    signs.regular = regularity(middle, px_mm);
    signs.contrast = std::sqrt(product(middle, middle) / static_cast<double>(middle.size()));
    signs.grain =
        difference_of_lanes(part(strip.tone, -middle_half_mm, middle_half_mm)) / std::max(signs.contrast, 1e-9);
    cv::Mat1f read;
    cv::reduce(part(strip.signal, -beside_mm, beside_mm), read, 0, cv::REDUCE_AVG);
    const cv::Mat1f soft = smooth(read, 0.0, std::max(1.0, change_mm / px_mm));
    signs.one_sided = one_sidedness({soft.begin(), soft.end()});
    return signs;
}

} // namespace pithward::boundary
