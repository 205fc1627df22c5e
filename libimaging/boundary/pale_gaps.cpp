#include "libimaging/boundary/pale_gaps.h"

#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/wood_look.h"

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double edge_mm = 0.08;         ///< A gap's edge is no broader than twice this.
constexpr double least_step = 0.15;      ///< Change of tone at the edges of a gap with a pale ground.
constexpr double least_pale_mm = 0.30;   ///< Such gaps are at least ...
constexpr double greatest_pale_mm = 6.0; ///< ... and at most so long.
constexpr double even_tone = 0.15;       ///< Spread of tone within one.
constexpr double wood_mm = 6.0;          ///< Wood up to here on both sides tells the colour of wood.
constexpr double strange_colour = 9.0;   ///< Usual deviations from it.

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

/// Gaps in places of the looks.
std::vector<Gap> pale_stretches(const std::vector<ColumnLook>& looks, double first, double last, double px_mm) {
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

} // namespace

CoarseLooks coarse_looks(const Lanes& lanes, const FlatStrip& strip) {
    constexpr double px_per_mm = 45.0;
    const int step = std::max(1, static_cast<int>(std::lround(1.0 / (px_per_mm * strip.px_mm))));
    FlatStrip coarse;
    coarse.flow_mm = shorten(strip.flow_mm, step);
    coarse.weight = shorten(strip.weight, step);
    coarse.tone = coarse.flow_mm; // only its size is asked for
    coarse.px_mm = strip.px_mm * step;
    coarse.lane_mm = strip.lane_mm;
    const Lanes seen = coarser(lanes, px_per_mm);
    return {looks_of(seen, coarse, seen.columns(), 0), step, coarse.px_mm};
}

std::vector<Gap> pale_gaps(const CoarseLooks& coarse, double first, double last) {
    const int step = coarse.step;
    std::vector<Gap> gaps = pale_stretches(coarse.looks, first / step, last / step, coarse.px_mm);
    for (Gap& gap : gaps) {
        gap.from = (gap.from + 0.5) * step - 0.5;
        gap.to = (gap.to + 0.5) * step - 0.5;
    }
    return gaps;
}

} // namespace pithward::boundary
