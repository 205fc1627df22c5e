#include "libcore/dating/shifts.h"

#include "libcore/dating/agreement.h"
#include "libcore/dating/autoregression.h"
#include "libcore/dating/student.h"

#include <algorithm>
#include <cmath>

namespace pithward::dating {

double lag_one(const YearSeries& series) {
    const Eigen::ArrayXd all = autocorrelation(series.values, 1);
    return all.size() > 1 ? all(1) : 0.0;
}

double independent_share(double a, double b) {
    return std::min(1.0, (1.0 - a * b) / (1.0 + a * b));
}

double chance_at(double r, int overlap, double independent_share) {
    const double years = independent_share * overlap;
    const double t = t_of(r, 3) * std::sqrt(std::max(0.0, years - 2.0)); // t_of(r, 3) is r / sqrt(1 - r^2).
    return student_tail(t, years - 2.0);
}

int least_overlap_of(const YearSeries& series) {
    constexpr int usual = 30;
    constexpr int least = 5;
    return std::max(least, std::min(usual, count(series.values)));
}

std::vector<ShiftMatch> every_shift(const YearSeries& series, const YearSeries& other, int least_overlap) {
    std::vector<ShiftMatch> matches;
    if (series.size() == 0 || other.size() == 0) {
        return matches;
    }
    const double independent = independent_share(lag_one(series), lag_one(other));
    const int lowest = other.first_year - series.last_year() + least_overlap - 1;
    const int highest = other.last_year() - series.first_year - least_overlap + 1;
    for (int shift = lowest; shift <= highest; ++shift) {
        const Agreement found = agreement(series, other, shift);
        if (found.overlap < least_overlap || !found.r) {
            continue;
        }
        matches.push_back({shift, found.overlap, *found.r, found.t, chance_at(*found.r, found.overlap, independent)});
    }
    return matches;
}

std::vector<RankedMatch> ranked(std::vector<ShiftMatch> matches, std::size_t most) {
    const auto positions = static_cast<double>(matches.size());
    std::ranges::stable_sort(matches, std::ranges::greater(), &ShiftMatch::t);
    matches.resize(std::min(most, matches.size()));
    std::vector<RankedMatch> result;
    result.reserve(matches.size());
    for (const ShiftMatch& match : matches) {
        result.push_back({match, best_of(match.chance, positions)});
    }
    return result;
}

} // namespace pithward::dating
