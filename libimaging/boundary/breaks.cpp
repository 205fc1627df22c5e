#include "libimaging/boundary/breaks.h"

#include "libimaging/boundary/wood_look.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace pithward::boundary {

namespace {

constexpr int lanes_beside = 2;     ///< Lanes on either side of the path that have to be dark too.
constexpr double least_mm = 0.08;   ///< Shorter dark stretches are dirt.
constexpr double least_share = 0.5; ///< A crack crosses at least this share of the core.
constexpr double core_mm = 1.0;     ///< Half breadth over which that share is taken.

constexpr double edge_mm = 0.08;         ///< A gap's edge is no broader than twice this.
constexpr double least_step = 0.15;      ///< Change of tone at the edges of a gap with a pale ground.
constexpr double least_pale_mm = 0.30;   ///< Such gaps are at least ...
constexpr double greatest_pale_mm = 6.0; ///< ... and at most so long.
constexpr double even_tone = 0.15;       ///< Spread of tone within one.
constexpr double wood_mm = 6.0;          ///< Wood up to here on both sides tells the colour of wood.
constexpr double strange_colour = 9.0;   ///< Usual deviations from it.

double dark_share(const FlatStrip& strip, int column, int half) {
    double dark = 0.0;
    for (int lane = strip.centre() - half; lane <= strip.centre() + half; ++lane) {
        dark += strip.weight(lane, column) < 0.3F ? 1.0 : 0.0;
    }
    return dark / (2 * half + 1);
}

/// Change of tone across a column, over `edge_mm` on both sides.
double step_at(const std::vector<ColumnLook>& looks, int column, double px_mm) {
    const int reach = std::max(1, static_cast<int>(edge_mm / px_mm));
    const int n = static_cast<int>(looks.size());
    return looks[static_cast<std::size_t>(std::min(n - 1, column + reach))].tone -
           looks[static_cast<std::size_t>(std::max(0, column - reach))].tone;
}

/// Column near `column` with the steepest change of the sign asked for.
int steepest_near(const std::vector<ColumnLook>& looks, int column, double sign, double px_mm) {
    const int reach = 2 * std::max(1, static_cast<int>(edge_mm / px_mm));
    const int n = static_cast<int>(looks.size());
    int best = column;
    double steepest = 0.0;
    for (int c = std::max(1, column - reach); c < std::min(n - 1, column + reach); ++c) {
        const double change =
            sign * (looks[static_cast<std::size_t>(c) + 1].tone - looks[static_cast<std::size_t>(c) - 1].tone);
        if (change > steepest) {
            steepest = change;
            best = c;
        }
    }
    return best;
}

std::vector<ColumnLook> between(const std::vector<ColumnLook>& looks, double from, double to) {
    const auto n = static_cast<double>(looks.size());
    const auto a = static_cast<std::ptrdiff_t>(std::clamp(from, 0.0, n));
    const auto b = static_cast<std::ptrdiff_t>(std::clamp(to, static_cast<double>(a), n));
    return {looks.begin() + a, looks.begin() + b};
}

/// True when the tone varies little within: no rings.
bool is_even(const std::vector<ColumnLook>& looks, int start, int stop, double px_mm) {
    const std::vector<ColumnLook> within = between(looks, start + edge_mm / px_mm, stop - edge_mm / px_mm);
    std::vector<double> tones;
    tones.reserve(within.size());
    for (const ColumnLook& look : within) {
        tones.push_back(look.tone);
    }
    return tones.size() >= 3 && quantile(tones, 0.9) - quantile(tones, 0.1) < even_tone;
}

/// True when the colour within is not that of wood of the same tone on both sides.
bool is_strange(const std::vector<ColumnLook>& looks, int start, int stop, int first, int last, double px_mm) {
    const double margin = 2.0 * edge_mm / px_mm;
    const double reach = wood_mm / px_mm;
    std::vector<ColumnLook> wood = between(looks, std::max<double>(first, start - reach), start - margin);
    const std::vector<ColumnLook> inner = between(looks, stop + margin, std::min<double>(last, stop + reach));
    wood.insert(wood.end(), inner.begin(), inner.end());
    const std::vector<ColumnLook> within = between(looks, start + edge_mm / px_mm, stop - edge_mm / px_mm);
    if (wood.size() < 30 || within.empty()) {
        return false;
    }
    const WoodLook look(wood);
    std::vector<double> strangeness;
    strangeness.reserve(within.size());
    for (const ColumnLook& column : within) {
        strangeness.push_back(look.colour_strangeness(column));
    }
    return quantile(strangeness, 0.5) > strange_colour;
}

} // namespace

std::vector<Gap> gaps_on_path(const FlatStrip& strip, double first, double last) {
    std::vector<Gap> gaps;
    const int half = std::min(strip.centre(), static_cast<int>(core_mm / strip.lane_mm));
    const int from = std::max(0, static_cast<int>(std::ceil(first)));
    const int to = std::min(strip.columns() - 1, static_cast<int>(std::floor(last)));
    int start = -1;
    for (int c = from; c <= to + 1; ++c) {
        const bool dark = c <= to && dark_share(strip, c, lanes_beside) > 0.5;
        if (dark && start < 0) {
            start = c;
        } else if (!dark && start >= 0) {
            const Gap gap{start - 0.5, c - 0.5, dark_share(strip, (start + c) / 2, half)};
            if ((gap.to - gap.from) * strip.px_mm >= least_mm && gap.breadth_share >= least_share) {
                gaps.push_back(gap);
            }
            start = -1;
        }
    }
    return gaps;
}

std::vector<Gap> pale_gaps_on_path(const std::vector<ColumnLook>& looks, double first, double last, double px_mm) {
    std::vector<Gap> gaps;
    const int from = std::max(0, static_cast<int>(std::ceil(first + edge_mm / px_mm)));
    const int to = std::min(static_cast<int>(looks.size()) - 1, static_cast<int>(std::floor(last - edge_mm / px_mm)));
    for (int c = from; c < to; ++c) {
        if (step_at(looks, c, px_mm) > -least_step) {
            continue;
        }
        const int start = steepest_near(looks, c, -1.0, px_mm);
        for (int end = start + static_cast<int>(least_pale_mm / px_mm);
             end < std::min(to, start + static_cast<int>(greatest_pale_mm / px_mm)); ++end) {
            if (step_at(looks, end, px_mm) < least_step) {
                continue;
            }
            const int stop = steepest_near(looks, end, 1.0, px_mm);
            if (is_even(looks, start, stop, px_mm) && is_strange(looks, start, stop, from, to, px_mm)) {
                gaps.push_back({double(start), double(stop), 1.0});
                c = stop;
            }
            break;
        }
        c = std::max(c, start + 1);
    }
    return gaps;
}

std::vector<Gap> together(std::vector<Gap> gaps, const std::vector<Gap>& others) {
    const std::vector<Gap> first = gaps;
    std::ranges::copy_if(others, std::back_inserter(gaps), [&](const Gap& other) {
        return std::ranges::none_of(first,
                                    [&](const Gap& gap) { return other.from <= gap.to && gap.from <= other.to; });
    });
    std::ranges::sort(gaps, {}, &Gap::from);
    return gaps;
}

double without_gaps(const std::vector<Gap>& gaps, double column) {
    double less = 0.0;
    for (const Gap& gap : gaps) {
        less += std::clamp(column - gap.from, 0.0, gap.to - gap.from);
    }
    return column - less;
}

} // namespace pithward::boundary
