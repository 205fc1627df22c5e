#include "tests/outside/dating/slip_scores.h"

#include <algorithm>
#include <cstdlib>
#include <optional>

namespace pithward::test {

using dating::Slip;

namespace {

double share(int part, int whole) {
    return whole == 0 ? 0.0 : static_cast<double>(part) / whole;
}

bool alarmed(const TrialSeries& series, double probability) {
    return std::ranges::any_of(series.told, [&](const Slip& slip) { return slip.probability >= probability; });
}

/// The told slip of the right kind with the highest probability.
std::optional<Slip> answer(const TrialSeries& series, const MadeMistake& made, double probability) {
    std::optional<Slip> best;
    for (const Slip& slip : series.told) {
        if (slip.kind == made.kind && slip.probability >= probability &&
            (!best || slip.probability > best->probability)) {
            best = slip;
        }
    }
    return best;
}

/// How many of two mistakes are matched by slips of their kind, no slip twice, as near as can be; and within 5 years.
std::pair<int, int> matched(const TrialSeries& series, double probability) {
    std::vector<Slip> left = series.told;
    std::erase_if(left, [&](const Slip& slip) { return slip.probability < probability; });
    int found = 0;
    int near = 0;
    for (const MadeMistake& made : series.made) {
        auto best = left.end();
        for (auto it = left.begin(); it != left.end(); ++it) {
            if (it->kind == made.kind &&
                (best == left.end() || std::abs(it->year - made.year) < std::abs(best->year - made.year))) {
                best = it;
            }
        }
        if (best != left.end()) {
            ++found;
            near += std::abs(best->year - made.year) <= 5 ? 1 : 0;
            left.erase(best);
        }
    }
    return {found, near};
}

} // namespace

SlipScores score(const std::vector<TrialSeries>& series, double probability) {
    SlipScores result;
    int found = 0;
    int within_5 = 0;
    int within_2 = 0;
    int exact = 0;
    int holds = 0;
    int alarms = 0;
    std::vector<int> ranges;
    for (const TrialSeries& one : series) {
        if (one.made.empty()) {
            ++result.clean;
            alarms += alarmed(one, probability) ? 1 : 0;
            result.archive_errors += one.archive_error && alarmed(one, probability) ? 1 : 0;
            continue;
        }
        ++result.mistaken;
        const MadeMistake& made = one.made.front();
        if (const auto slip = answer(one, made, probability)) {
            const int error = std::abs(slip->year - made.year);
            ++found;
            within_5 += error <= 5 ? 1 : 0;
            within_2 += error <= 2 ? 1 : 0;
            exact += error == 0 ? 1 : 0;
            holds += slip->from <= made.year && made.year <= slip->to ? 1 : 0;
            ranges.push_back(slip->to - slip->from + 1);
        }
    }
    result.found = share(found, result.mistaken);
    result.within_5 = share(within_5, result.mistaken);
    result.within_2 = share(within_2, result.mistaken);
    result.exact = share(exact, result.mistaken);
    result.range_holds = share(holds, found);
    result.alarmed = share(alarms, result.clean);
    result.alarmed_without_archive_errors = share(alarms - result.archive_errors, result.clean - result.archive_errors);
    if (!ranges.empty()) {
        std::ranges::nth_element(ranges, ranges.begin() + static_cast<std::ptrdiff_t>(ranges.size() / 2));
        result.median_range = ranges[ranges.size() / 2];
    }
    return result;
}

std::vector<double> likeliest_of_each(const std::vector<TrialSeries>& series) {
    std::vector<double> result;
    for (const TrialSeries& one : series) {
        if (!one.told.empty()) {
            result.push_back(std::ranges::max_element(one.told, {}, &Slip::probability)->probability);
        }
    }
    return result;
}

PairScores score_pairs(const std::vector<TrialSeries>& series, double probability) {
    PairScores result;
    int both = 0;
    int near = 0;
    int same = 0;
    int same_near = 0;
    for (const TrialSeries& one : series) {
        if (one.made.size() != 2) {
            continue;
        }
        ++result.series;
        const auto [found, within] = matched(one, probability);
        const bool same_way = one.made[0].kind == one.made[1].kind;
        both += found == 2 ? 1 : 0;
        near += within == 2 ? 1 : 0;
        same += same_way ? 1 : 0;
        same_near += same_way && within == 2 ? 1 : 0;
    }
    result.both_found = share(both, result.series);
    result.both_within_5 = share(near, result.series);
    result.same_within_5 = share(same_near, same);
    result.opposite_within_5 = share(near - same_near, result.series - same);
    return result;
}

} // namespace pithward::test
