#include "libimaging/boundary/outer_end.h"

#include "libimaging/boundary/filters.h"

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double search_mm = 4.0;     ///< The wood's edge is sought up to here from the path's start.
constexpr double reference_mm = 12.0; ///< Wood up to here tells what wood looks like.
constexpr double soft_mm = 0.06;      ///< Smoothing of the two measures.
constexpr double half_breadth_mm = 1.2;
constexpr double steep_mm = 0.12;      ///< The edge moves to the steepest darkening within this distance.
constexpr double least_bark_mm = 0.25; ///< A dark or rough stretch shorter than this is a stain, not bark.
constexpr double inside_mm = 0.09;     ///< The outermost wood is looked at this far inside its edge.

/// Median tone and robust spread across the middle lanes, column by column.
struct Texture {
    std::vector<double> tone;
    std::vector<double> spread;
    std::vector<double> wood; ///< Share of lanes that are wood.
};

Texture texture_of(const FlatStrip& strip, int columns) {
    const int half = std::min(strip.centre(), static_cast<int>(half_breadth_mm / strip.lane_mm));
    const cv::Range middle(strip.centre() - half, strip.centre() + half + 1);
    const cv::Mat1f tone = smooth(strip.tone(middle, cv::Range(0, columns)).clone(), 0.0, 0.03 / strip.px_mm);
    Texture out;
    std::vector<double> cells(static_cast<std::size_t>(tone.rows));
    const auto median = [&] {
        const auto m = cells.begin() + static_cast<std::ptrdiff_t>(cells.size() / 2);
        std::nth_element(cells.begin(), m, cells.end());
        return *m;
    };
    for (int c = 0; c < columns; ++c) {
        double wood = 0.0;
        for (int r = 0; r < tone.rows; ++r) {
            cells[static_cast<std::size_t>(r)] = static_cast<double>(tone(r, c));
            wood += static_cast<double>(strip.weight(middle.start + r, c));
        }
        const double m = median();
        for (double& cell : cells) {
            cell = std::abs(cell - m);
        }
        out.tone.push_back(m);
        out.spread.push_back(1.4826 * median());
        out.wood.push_back(wood / tone.rows);
    }
    return out;
}

double quantile(std::vector<double> values, double share) {
    const auto k = static_cast<std::size_t>(share * static_cast<double>(values.size() - 1));
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(k), values.end());
    return values[k];
}

std::vector<double> running_mean(const std::vector<double>& values, int half) {
    std::vector<double> out(values.size());
    const int n = static_cast<int>(values.size());
    for (int i = 0; i < n; ++i) {
        const int from = std::max(0, i - half);
        const int to = std::min(n - 1, i + half);
        double sum = 0.0;
        for (int k = from; k <= to; ++k) {
            sum += values[static_cast<std::size_t>(k)];
        }
        out[static_cast<std::size_t>(i)] = sum / (to - from + 1);
    }
    return out;
}

/// Columns that can't be wood: too dark, too rough, or a gap.
std::vector<bool> strange(const FlatStrip& strip, const Texture& texture, int search) {
    const auto from = texture.tone.begin() + search;
    const std::vector<double> wood_tone(from, texture.tone.end());
    const std::vector<double> wood_spread(texture.spread.begin() + search, texture.spread.end());
    const double darkest = quantile(wood_tone, 0.03);
    const double lightest = quantile(wood_tone, 0.9);
    const double too_dark = darkest - 0.15 * (lightest - darkest) - 0.02;
    const double too_rough = 1.4 * quantile(wood_spread, 0.95);
    const int half = std::max(1, static_cast<int>(soft_mm / strip.px_mm));
    const std::vector<double> spread = running_mean(texture.spread, half);
    std::vector<bool> out;
    for (int c = 0; c < search; ++c) {
        const auto k = static_cast<std::size_t>(c);
        out.push_back(texture.tone[k] < too_dark || spread[k] > too_rough || texture.wood[k] < 0.4);
    }
    return out;
}

} // namespace

OuterEnd outer_end(const FlatStrip& strip, const std::vector<Mark>& marks) {
    OuterEnd end;
    end.column = strip.column(0.0);
    const int search = static_cast<int>(strip.column(std::min(search_mm, 0.3 * strip.path_mm)));
    const int reference =
        std::min(strip.columns(), static_cast<int>(strip.column(std::min(reference_mm, strip.path_mm))));
    if (reference - search < 20) {
        return end;
    }
    const Texture texture = texture_of(strip, reference);
    const std::vector<bool> odd = strange(strip, texture, search);

    // From within outward: the wood ends where a stretch of strange columns begins that is too long for a stain.
    const int least = static_cast<int>(least_bark_mm / strip.px_mm);
    int run = 0;
    int edge = -1;
    for (int c = search - 1; c >= 0; --c) {
        run = odd[static_cast<std::size_t>(c)] ? run + 1 : std::max(0, run - 3);
        if (run >= least) {
            edge = c + run;
            break;
        }
    }
    if (edge < 0) {
        end.judged = OuterWood::Lost;
        end.probability = 0.7;
        return end;
    }
    end.bark_seen = true;

    const int reach = static_cast<int>(steep_mm / strip.px_mm);
    double steepest = 0.0;
    end.column = edge;
    for (int c = std::max(1, edge - reach); c < std::min(search - 1, edge + reach); ++c) {
        const auto k = static_cast<std::size_t>(c);
        const double rise = texture.tone[k + 1] - texture.tone[k - 1];
        if (rise > steepest) {
            steepest = rise;
            end.column = c;
        }
    }

    // Tone of the outermost wood between the light and the dark of the first rings.
    std::vector<double> light;
    std::vector<double> dark;
    for (const Mark& mark : marks) {
        if (mark.column > end.column + 2.0 * reach && mark.log_odds > 0.0 && light.size() < 5 &&
            mark.column < reference) {
            const auto k = static_cast<std::size_t>(mark.column);
            const auto outer = texture.tone.begin() + static_cast<std::ptrdiff_t>(k) -
                               std::min<std::ptrdiff_t>(static_cast<std::ptrdiff_t>(k), reach);
            light.push_back(*std::max_element(outer, texture.tone.begin() + static_cast<std::ptrdiff_t>(k)));
            const auto inner =
                texture.tone.begin() +
                static_cast<std::ptrdiff_t>(std::min(k + static_cast<std::size_t>(reach), texture.tone.size()));
            dark.push_back(*std::min_element(texture.tone.begin() + static_cast<std::ptrdiff_t>(k), inner));
        }
    }
    if (light.empty()) {
        return end;
    }
    const double l = quantile(light, 0.5);
    const double d = quantile(dark, 0.5);
    const auto inside = static_cast<std::size_t>(
        std::clamp(end.column + inside_mm / strip.px_mm, 0.0, static_cast<double>(texture.tone.size() - 1)));
    const double darkness = (l - texture.tone[inside]) / std::max(l - d, 1e-3);
    const double log_odds = 6.0 * (darkness - 0.35);
    const double complete = 1.0 / (1.0 + std::exp(-log_odds));
    end.judged = complete >= 0.5 ? OuterWood::Complete : OuterWood::Unfinished;
    end.probability = std::max(complete, 1.0 - complete);
    return end;
}

} // namespace pithward::boundary
