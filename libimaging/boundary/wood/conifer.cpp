#include "libimaging/boundary/falls.h"
#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/trace.h"
#include "libimaging/boundary/wood/edge_place.h"
#include "libimaging/boundary/wood/fall_marks.h"
#include "libimaging/boundary/wood/wood_model.h"

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double level_mm = 0.12;       ///< The levels before and after a change are taken over this length.
constexpr double least_fall = 0.015;    ///< Falls of tone under this are not looked at.
constexpr double finest_mm = 0.02;      ///< Smoothing of the profile ...
constexpr double finest_columns = 1.2;  ///< ... but at least this.
constexpr double divided_columns = 0.6; ///< Smoothing of the profile that tells two boundaries close together ...
constexpr double divided_share = 0.12;  ///< ... if each has so much of the change.
constexpr double reach_edges = 1.5;     ///< Window of the tracing, in breadths of the change.
constexpr double latewood_half = 0.5;   ///< Latewood ends where the tone has risen by this share.

/// Broad to fine. The last rounds follow waves of the size of a ring.
const FlowPlan flow_plan{
    .rounds = {{0.50, 0.0, 2.0, 0.5, 0.5},
               {0.35, 0.0, 2.0, 0.5, 0.5},
               {0.25, 0.0, 2.0, 0.5, 0.5},
               {0.18, 0.0, 1.2, 0.5, 0.3},
               {0.12, 0.0, 1.2, 0.4, 0.2},
               {0.10, 0.0, 0.8, 0.3, 0.1},
               {0.08, 0.0, 0.6, 0.3, 0.0},
               {0.08, 0.0, 0.6, 0.3, 0.0}},
    .follow = {{0.10, 0.0, 0.8, 0.6}, {0.06, 0.0, 0.4, 0.6}},
};

Signal conifer_signal(const Relief& relief, const Lanes& /*lanes*/) {
    return {.traced = relief.level, .read = relief.tone, .plan = flow_plan};
}

constexpr OddsModel odds{
    .constant = 1.61,
    .log_fall = 0.07,
    .log_relative_fall = 2.25,
    .softness = -3.11,
    .before = 0.02,
    .after = 0.59,
    .recovery = 0.61,
    .lopsidedness = 4.03,
    .support = -0.03,
    .weaker_side = 2.0, // Set, not fitted: the rendered cores have too little that doesn't cross the core.
};

/// The likeness of neighbouring widths counts little: narrow rings beside wide ones are what is overlooked most.
constexpr SequenceOptions sequence{.width_weight = 0.3, .taken = 0.2};

// How lopsided a change is counts between these, ...
constexpr double least_lopsided = -0.5;
constexpr double most_lopsided = 1.2;
/// ... and is taken as this where it can't be seen: ...
constexpr double unseen_lopsided = 0.6;
/// ... where the dark wood is as broad as the blur. It is seen in full where it is this many times as broad.
constexpr double seen_in_full = 2.0;

/// Breadth of the dark wood inward of a fall: up to where half of the way back to the next earlywood is done.
double latewood_breadth(const std::vector<float>& profile, const Fall& fall, double px_mm) {
    const double goal =
        static_cast<double>(profile[static_cast<std::size_t>(fall.bottom)]) + latewood_half * fall.rise_after;
    if (fall.rise_after < 0.3 * fall.height) {
        return 0.0;
    }
    auto c = static_cast<std::size_t>(fall.bottom);
    while (c + 1 < profile.size() && static_cast<double>(profile[c]) < goal) {
        ++c;
    }
    return (static_cast<double>(c) - fall.column) * px_mm;
}

/// Growth ends at once and latewood comes bit by bit, so a boundary's fall is steeper than the rise behind it; a band
/// within a ring is alike on both sides (common knowledge of the trade). Blur makes narrow latewood alike, too, and a
/// fall divided from its neighbour has no rise of its own.
double lopsidedness(const Mark& mark, const Fall& fall) {
    const double breadths = mark.latewood_mm / std::max(mark.signs.edge_mm, 1e-3);
    const double seen = fall.own_rise ? std::clamp((breadths - 1.0) / (seen_in_full - 1.0), 0.0, 1.0) : 0.0;
    return seen * std::clamp(mark.signs.lopsidedness, least_lopsided, most_lopsided) + (1.0 - seen) * unseen_lopsided;
}

/// Brightness from the tone: places are sought where half of the change of brightness is done, not of its logarithm.
std::vector<float> brightness_of(const std::vector<float>& tone) {
    std::vector<float> out(tone.size());
    std::ranges::transform(tone, out.begin(), [](float t) { return std::exp(t); });
    return out;
}

/// In conifers the tone falls steeply from the earlywood of the next year to the latewood which the boundary closes.
std::vector<Mark> conifer_marks(const FlatStrip& strip) {
    const std::vector<float> raw = profile(strip, strip.signal, 0, strip.lanes() - 1);
    const double sigma = std::max(finest_columns, finest_mm / strip.px_mm);
    const std::vector<float> line = smooth(raw, sigma);
    const std::vector<float> brightness = smooth(brightness_of(raw), sigma);
    const std::vector<Fall> coarse = falls_of(line, least_fall);
    const double blur = blur_of(coarse, sigma);
    const std::vector<Fall> falls = divided(coarse, smooth(raw, divided_columns), divided_share);

    std::vector<Mark> marks = marks_from_falls(falls, strip.px_mm);
    std::vector<double> reach;
    for (std::size_t k = 0; k < falls.size(); ++k) {
        Mark& mark = marks[k];
        mark.latewood_mm = latewood_breadth(line, falls[k], strip.px_mm);
        mark.signs.lopsidedness = lopsidedness(mark, falls[k]);
        mark.column = edge_column(brightness, falls[k], blur, mark.latewood_mm / strip.px_mm);
        const double edge = std::clamp(mark.signs.edge_mm / strip.px_mm, 3.0, std::max(3.0, 0.15 / strip.px_mm));
        reach.push_back(reach_edges * edge);
    }
    trace_marks(strip, strip.signal, line, reach, marks);
    judge_marks(marks, line, level_mm, strip.px_mm, odds);
    return marks;
}

} // namespace

WoodModel conifer_model() {
    return {.type = WoodType::Conifer,
            .signal = conifer_signal,
            .marks = conifer_marks,
            .sequence = sequence,
            .overlooked_from = 0.05,
            .bark_by_colour = true};
}

} // namespace pithward::boundary
