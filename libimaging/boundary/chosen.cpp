#include "libimaging/boundary/chosen.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pithward::boundary {

namespace {

constexpr double hopeless = -7.0;      ///< Marks of lower log odds are dropped before the sequence is chosen.
constexpr double even_darkness = 0.25; ///< Wood under the bark that is less dark than this is even.

/// The outermost complete ring ends at the wood's edge: a mark of its own, since no earlywood lies outside it. Its odds
/// are those of the whole judgement: what the sequence adds for each boundary is taken off, and the first ring's width
/// counts only as far as it is more or less alike its neighbour than usual.
Mark edge_mark(const OuterEnd& outer, const SequenceOptions& options) {
    Mark mark;
    mark.column = outer.column;
    mark.log_odds = std::log(outer.probability / (1.0 - std::min(outer.probability, 0.999))) - options.taken -
                    options.usual_width_score();
    mark.sd_mm = 0.03;
    mark.slope = outer.slope;
    return mark;
}

/// Whether a ring ends at the wood's edge. When growth is told to have ended but what lies under the edge is even, it
/// is inner bark and the first change inside it is the wood's true edge.
bool ends_at_edge(const OuterEnd& outer, OuterWood told) {
    if (!outer.edge_seen || told == OuterWood::Unfinished || told == OuterWood::Lost) {
        return false;
    }
    return told == OuterWood::Complete ? outer.darkness > even_darkness : outer.judged == OuterWood::Complete;
}

} // namespace

Chosen choose(const FlatStrip& strip, std::vector<Mark> marks, const OuterEnd& outer, const std::vector<Gap>& gaps,
              OuterWood told, const SequenceOptions& options) {
    const double first = outer.edge_seen ? outer.column + 0.08 / strip.px_mm : strip.column(-0.02);
    const double last = strip.column(strip.path_mm + 0.02);
    std::erase_if(marks, [&](const Mark& mark) {
        return mark.column < first || mark.column > last || mark.log_odds < hopeless ||
               std::ranges::any_of(gaps,
                                   [&](const Gap& gap) { return mark.column > gap.from && mark.column < gap.to; });
    });
    if (ends_at_edge(outer, told)) {
        marks.insert(marks.begin(), edge_mark(outer, options));
    }
    Chosen chosen;
    std::vector<double> odds;
    for (const Mark& mark : marks) {
        chosen.s_mm.push_back(without_gaps(gaps, mark.column) * strip.px_mm);
        odds.push_back(mark.log_odds);
    }
    chosen.sequence = best_sequence(chosen.s_mm, odds, options);
    chosen.marks = std::move(marks);
    return chosen;
}

void measure_latewood(const WoodModel& model, const FlatStrip& strip, Chosen& chosen) {
    if (model.measure_latewood == nullptr) {
        return;
    }
    std::vector<Mark> boundaries;
    for (const std::size_t k : chosen.sequence.chosen) {
        boundaries.push_back(chosen.marks[k]);
    }
    model.measure_latewood(strip, boundaries);
    for (std::size_t i = 0; i < boundaries.size(); ++i) {
        chosen.marks[chosen.sequence.chosen[i]].latewood_mm = boundaries[i].latewood_mm;
    }
}

} // namespace pithward::boundary
