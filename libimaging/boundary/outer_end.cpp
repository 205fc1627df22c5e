#include "libimaging/boundary/outer_end.h"

#include "libimaging/boundary/bark_or_wood.h"
#include "libimaging/boundary/texture.h"
#include "libimaging/boundary/wood_look.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace pithward::boundary {

namespace {

constexpr double search_mm = 8.0;         ///< The edge is sought up to here, but not beyond a third of the path.
constexpr double reference_mm = 8.0;      ///< So much wood behind tells what wood looks like.
constexpr double near_wood_mm = 5.0;      ///< So much wood tells what wood next to the edge looks like.
constexpr double near_colour_limit = 3.5; ///< Deviations of its colour count up to this.
constexpr double margin_mm = 0.4;         ///< The flow of the rings is held from this far inside the edge.
constexpr double near_mm = 0.15;          ///< The edge moves to the strongest change within this distance.
constexpr double unit_mm = 0.02;          ///< Evidence is counted for each such length, whatever the resolution.
constexpr double least_evidence = 20.0;   ///< About 0.15 mm of clear bark.
constexpr double ring_against = 4.5;      ///< A ring boundary speaks for wood by its log odds times this.
constexpr double sure_ring = 3.5;         ///< Log odds of a ring boundary that bark hardly ever shows.
constexpr int rings_of_wood = 3;          ///< So many of these are never bark, however stained.
constexpr double latewood_from_mm = 0.04; ///< The wood under the edge is looked at from here ...
constexpr double latewood_to_mm = 0.22;   ///< ... to here.
constexpr double least_ring_mm = 0.06;    ///< A mark nearer to the edge than this is the edge itself.
constexpr double as_dark = 0.45;          ///< Share of the usual darkness from which growth had ended.
constexpr double judging = 7.0;           ///< Steepness of that judgement.

/// Column with the highest sum of evidence before it, and that sum.
struct Split {
    int column = 0;
    double evidence = 0.0;
};

using Evidence = std::function<double(const ColumnLook&)>;

Split best_split(const std::vector<ColumnLook>& looks, const std::vector<Mark>& marks, int first, int search,
                 const Evidence& against_wood, double px_mm) {
    Split best{first, 0.0};
    double sum = 0.0;
    auto mark = marks.begin();
    for (int c = 0; c < search; ++c) {
        for (; mark != marks.end() && mark->column < c; ++mark) {
            sum -= ring_against * std::clamp(mark->log_odds, 0.0, 6.0);
        }
        sum += against_wood(looks[static_cast<std::size_t>(c)]) * px_mm / unit_mm;
        if (c >= first && sum > best.evidence) {
            best = {c + 1, sum};
        }
    }
    return best;
}

/// Where the search for the edge ends at the latest: at the first of several sure ring boundaries outside an edge that
/// was found. Resin and stain make wood look strange, but bark shows no rings.
int before_rings(const std::vector<Mark>& marks, int first, int edge, int search) {
    int rings = 0;
    int before = search;
    for (const Mark& mark : marks) {
        if (mark.column > first && mark.column < edge && mark.log_odds > sure_ring) {
            before = rings++ == 0 ? std::max(first + 1, static_cast<int>(mark.column)) : before;
        }
    }
    return rings >= rings_of_wood ? before : search;
}

/// The split again, with what is learnt beside it. Next to the edge heartwood does not blur what wood looks like, so
/// colour counts for more, and what lies outside is known too.
Split next_to_bark(const std::vector<ColumnLook>& looks, const std::vector<Mark>& marks, int first, int search,
                   Split split, double px_mm) {
    const int columns = static_cast<int>(looks.size());
    for (int round = 0; round < 2; ++round) {
        const int from = std::min(columns - 30, split.column + static_cast<int>(margin_mm / px_mm));
        const int to = std::min(columns, from + static_cast<int>(near_wood_mm / px_mm));
        const WoodLook wood({looks.begin() + from, looks.begin() + to});
        const auto material = BarkOrWood::learnt(looks, split.column, px_mm);
        const auto against_wood = [&](const ColumnLook& look) {
            return wood.evidence_against(look, near_colour_limit) +
                   (material ? 0.5 * material->evidence_for_bark(look) : 0.0);
        };
        split.column = best_split(looks, marks, first, search, against_wood, px_mm).column;
    }
    return split;
}

/// The column that parts bark from wood best, around a column.
int parted(const std::vector<ColumnLook>& looks, const BarkOrWood& material, int column, int reach) {
    int best = std::max(0, column - reach);
    double sum = 0.0;
    double most = 0.0;
    for (int c = best; c < std::min(static_cast<int>(looks.size()), column + reach); ++c) {
        sum += material.evidence_for_bark(looks[static_cast<std::size_t>(c)]);
        if (sum > most) {
            most = sum;
            best = c + 1;
        }
    }
    return best;
}

/// The strongest change of colour around a column.
int strongest_change(const std::vector<ColumnLook>& looks, int column, int reach) {
    int best = column;
    double strongest = 0.0;
    const int n = static_cast<int>(looks.size());
    for (int c = std::max(1, column - reach); c < std::min(n - 1, column + reach); ++c) {
        const ColumnLook& a = looks[static_cast<std::size_t>(c) - 1];
        const ColumnLook& b = looks[static_cast<std::size_t>(c) + 1];
        const double distance = static_cast<double>(c - column) / reach;
        const double change =
            std::hypot(b.tone - a.tone, b.red - a.red, b.blue - a.blue) * (1.0 - 0.5 * distance * distance);
        if (change > strongest) {
            strongest = change;
            best = c;
        }
    }
    return best;
}

/// Lightest tone between two columns.
double lightest_between(const std::vector<ColumnLook>& looks, double from, double to) {
    const auto last = static_cast<double>(looks.size() - 1);
    auto c = static_cast<std::size_t>(std::clamp(from, 0.0, last));
    double lightest = looks[c].tone;
    for (; c < static_cast<std::size_t>(std::clamp(to, 0.0, last)); ++c) {
        lightest = std::max(lightest, looks[c].tone);
    }
    return lightest;
}

/// How much darker the wood behind an edge is, on average, than the lightest of the same ring. Up to half of the ring
/// is looked at.
double darkness_behind(const std::vector<ColumnLook>& looks, double edge, double next_edge, double px_mm) {
    const double reach = std::min(latewood_to_mm / px_mm, 0.5 * (next_edge - edge));
    const int from = static_cast<int>(std::lround(edge + std::min(latewood_from_mm / px_mm, 0.5 * reach)));
    const int to = std::min(static_cast<int>(std::lround(edge + reach)), static_cast<int>(looks.size()) - 1);
    const double light = lightest_between(looks, edge, next_edge);
    double sum = 0.0;
    for (int c = from; c <= to; ++c) {
        sum += light - looks[static_cast<std::size_t>(c)].tone;
    }
    return to >= from ? sum / (to - from + 1) : 0.0;
}

void judge(OuterEnd& end, const std::vector<ColumnLook>& looks, const std::vector<Mark>& marks, double px_mm) {
    constexpr std::size_t rings = 8;
    std::vector<double> edges{end.column};
    for (const Mark& mark : marks) {
        if (mark.log_odds > 1.0 && mark.column > end.column + least_ring_mm / px_mm &&
            mark.column < static_cast<double>(looks.size()) && edges.size() <= rings) {
            edges.push_back(mark.column);
        }
    }
    if (edges.size() < 4) {
        return;
    }
    std::vector<double> usual;
    for (std::size_t k = 1; k + 1 < edges.size(); ++k) {
        usual.push_back(darkness_behind(looks, edges[k], edges[k + 1], px_mm));
    }
    const double share = darkness_behind(looks, edges[0], edges[1], px_mm) / std::max(quantile(usual, 0.5), 1e-3);
    end.darkness = share;
    const double complete = 1.0 / (1.0 + std::exp(-judging * (share - as_dark)));
    end.judged = complete >= 0.5 ? OuterWood::Complete : OuterWood::Unfinished;
    end.probability = std::clamp(std::max(complete, 1.0 - complete), 0.5, 0.98);
}

} // namespace

OuterEnd outer_end(const Lanes& lanes, const FlatStrip& strip, const std::vector<Mark>& marks, const WoodModel& model) {
    OuterEnd end;
    const std::vector<Mark> for_wood = model.bark_has_lines ? std::vector<Mark>{} : marks;
    end.column = strip.column(0.0);
    const int first = std::max(0, static_cast<int>(std::floor(end.column)));
    int search = static_cast<int>(strip.column(std::min(search_mm, strip.path_mm / 3.0)));
    const int columns = std::min(strip.columns(), search + static_cast<int>(reference_mm / strip.px_mm));
    if (columns - search < 30) {
        return end;
    }
    int held = 0;
    std::vector<ColumnLook> looks;
    Split split;
    const auto inside = [&](double mm) { return split.column + static_cast<int>(mm / strip.px_mm); };
    // Twice: the flow of the rings, held at the edge found first, makes the bark's roughness across them plain.
    for (int round = 0; round < 2; ++round) {
        looks = looks_of(lanes, strip, columns, held);
        const WoodLook wood({looks.begin() + (round == 0 ? search : std::min(search, inside(margin_mm))), looks.end()});
        const auto strange = [&](const ColumnLook& look) { return wood.evidence_against(look); };
        split = best_split(looks, for_wood, first, search, strange, strip.px_mm);
        if (const int before = before_rings(for_wood, first, split.column, search); before < search) {
            search = before;
            split = best_split(looks, for_wood, first, search, strange, strip.px_mm);
        }
        held = inside(margin_mm);
    }
    if (split.evidence < least_evidence || split.column <= first) {
        end.judged = OuterWood::Lost;
        end.probability = 0.7;
        return end;
    }
    end.edge_seen = true;
    const int reach = static_cast<int>(near_mm / strip.px_mm);
    const Split told = model.bark_by_colour ? next_to_bark(looks, for_wood, first, search, split, strip.px_mm) : split;
    const auto material = model.bark_by_colour ? BarkOrWood::learnt(looks, told.column, strip.px_mm) : std::nullopt;
    end.column = std::max(first, material ? parted(looks, *material, told.column, reach)
                                          : strongest_change(looks, told.column, reach));
    const int half = std::min(3, strip.centre());
    const int at = std::min(held, strip.columns() - 1);
    end.slope =
        static_cast<double>(strip.flow_mm(strip.centre() + half, at) - strip.flow_mm(strip.centre() - half, at)) /
        (2.0 * half * strip.lane_mm);
    judge(end, looks, marks, strip.px_mm);
    end.probability = std::min(end.probability, model.surest_edge);
    return end;
}

} // namespace pithward::boundary
