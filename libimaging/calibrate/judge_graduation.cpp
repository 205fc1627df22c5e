#include "libimaging/calibrate/judge_graduation.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pithward::calibrate {

namespace {

constexpr double least_difference = 0.15; ///< In periods: how much longer than the shortest marks the next are.
constexpr double least_residual = 0.025;  ///< In periods: lengths are known no better.
constexpr double greatest_residual = 1.5; ///< In periods: soiled and broken marks count no more than this.
constexpr double level_share = 0.7;       ///< Of marks of one rank: wear makes shorter, dirt seldom longer.
constexpr double for_alike = 2.0;         ///< Log odds against a kind for two neighbouring ranks of one length.
constexpr std::size_t least_lengths = 8;

/// A mark's number and its length.
struct Known {
    int number = 0;
    double length = 0.0;
};

double level_of(std::vector<double> lengths) {
    const auto at = lengths.begin() + std::lround(level_share * static_cast<double>(lengths.size() - 1));
    std::nth_element(lengths.begin(), at, lengths.end());
    return *at;
}

/// Too long weighs more than too short, so that `level_of` is the best level.
double residual(double length, double level) {
    const double off = length - level;
    return 2.0 * std::min(greatest_residual, off > 0.0 ? level_share * off : (level_share - 1.0) * off);
}

double criterion(double sum, std::size_t lengths, int levels) {
    const auto n = static_cast<double>(lengths);
    return n * std::log(std::max(least_residual, sum / n)) + 0.5 * levels * std::log(n);
}

/// The usual length at each rank.
struct Levels {
    std::vector<double> at_rank;
    int alike = 0; ///< Neighbouring ranks of one length, though longer marks should be longer.
};

/// Nothing where the marks next to the shortest are no longer than these, since then nothing tells one pattern from
/// another. A rank whose marks look shorter than those of the rank below, being worn, takes that one's level.
std::optional<Levels> levels_of(const std::vector<Known>& known, const GraduationKind& kind, int phase) {
    std::vector<std::vector<double>> by_rank(kind.longer_at_each.size() + 1);
    for (const Known& mark : known) {
        by_rank[static_cast<std::size_t>(kind.rank(mark.number + phase))].push_back(mark.length);
    }
    if (by_rank[0].empty() || by_rank[1].empty()) {
        return std::nullopt;
    }
    Levels levels{{level_of(by_rank[0])}, 0};
    for (std::size_t rank = 1; rank < by_rank.size(); ++rank) {
        const double below = levels.at_rank.back();
        const double own = by_rank[rank].empty() ? below : std::max(below, level_of(by_rank[rank]));
        levels.alike += !by_rank[rank].empty() && own < below + least_difference ? 1 : 0;
        levels.at_rank.push_back(own);
    }
    return levels.at_rank[1] > levels.at_rank[0] + least_difference ? std::optional(levels) : std::nullopt;
}

/// Schwarz's criterion, halved: the lower the better. Infinite where the kind can't be.
double cost(const std::vector<Known>& known, const GraduationKind& kind, int phase) {
    const auto levels = levels_of(known, kind, phase);
    if (!levels) {
        return std::numeric_limits<double>::infinity();
    }
    double sum = 0.0;
    for (const Known& mark : known) {
        sum += residual(mark.length, levels->at_rank[static_cast<std::size_t>(kind.rank(mark.number + phase))]);
    }
    return criterion(sum, known.size(), static_cast<int>(levels->at_rank.size())) + std::log(kind.cycle()) +
           for_alike * levels->alike;
}

/// The criterion with one length for all.
double cost_of_no_pattern(const std::vector<Known>& known) {
    std::vector<double> lengths(known.size());
    std::ranges::transform(known, lengths.begin(), &Known::length);
    const double level = level_of(lengths);
    double sum = 0.0;
    for (const double length : lengths) {
        sum += residual(length, level);
    }
    return criterion(sum, known.size(), 1);
}

} // namespace

std::optional<GraduationJudgement> judge_graduation(const std::vector<double>& lengths) {
    std::vector<Known> known;
    for (std::size_t k = 0; k < lengths.size(); ++k) {
        if (std::isfinite(lengths[k])) {
            known.push_back({static_cast<int>(k), lengths[k]});
        }
    }
    if (known.size() < least_lengths) {
        return std::nullopt;
    }
    double best = std::numeric_limits<double>::infinity();
    double next = cost_of_no_pattern(known);
    GraduationJudgement judgement;
    for (const GraduationKind& kind : graduation_kinds()) {
        double least = std::numeric_limits<double>::infinity();
        for (int phase = 0; phase < kind.cycle(); ++phase) {
            least = std::min(least, cost(known, kind, phase));
        }
        if (least < best) {
            std::swap(least, best);
            judgement.graduation = kind.graduation;
        }
        next = std::min(next, least);
    }
    judgement.lead = next - best;
    return judgement.lead > 0.0 ? std::optional(judgement) : std::nullopt;
}

} // namespace pithward::calibrate
