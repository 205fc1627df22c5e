#include "libcore/dating/shifts.h"

#include "libcore/dating/autoregression.h"
#include "libcore/dating/student.h"

#include <algorithm>
#include <cmath>

namespace pithward::dating {

namespace {

/// A series about its mean as the sums over an overlap need it: 0 where it has no value, and where it has one.
struct Summed {
    Eigen::ArrayXd value;
    Eigen::ArrayXd square;
    Eigen::ArrayXd there;

    explicit Summed(const YearSeries& series)
        : there(series.values.isNaN().select(Eigen::ArrayXd::Zero(series.size()), 1.0)) {
        const double middle = mean(series.values); // So that sums of squares keep their digits.
        value = (there > 0.0).select(series.values - middle, 0.0);
        square = value.square();
    }
};

double dot(const Eigen::ArrayXd& a, int from_a, const Eigen::ArrayXd& b, int from_b, int n) {
    return a.segment(from_a, n).matrix().dot(b.segment(from_b, n).matrix());
}

/// The match at a shift by sums over the overlap; nothing without enough years, or where one of them does not vary.
std::optional<ShiftMatch> match_at(const Summed& a, int from_a, const Summed& b, int from_b, int years, int shift,
                                   int least_overlap) {
    const double n = dot(a.there, from_a, b.there, from_b, years);
    const int overlap = static_cast<int>(std::lround(n));
    if (overlap < std::max(3, least_overlap)) {
        return std::nullopt;
    }
    const double sum_a = dot(a.value, from_a, b.there, from_b, years);
    const double sum_b = dot(a.there, from_a, b.value, from_b, years);
    const double squares_a = dot(a.square, from_a, b.there, from_b, years);
    const double squares_b = dot(a.there, from_a, b.square, from_b, years);
    const double aa = squares_a - sum_a * sum_a / n;
    const double bb = squares_b - sum_b * sum_b / n;
    constexpr double constant = 1e-12; // What rounding leaves of equal values.
    if (aa <= constant * squares_a || bb <= constant * squares_b) {
        return std::nullopt;
    }
    const double ab = dot(a.value, from_a, b.value, from_b, years) - sum_a * sum_b / n;
    const double r = std::clamp(ab / std::sqrt(aa * bb), -1.0, 1.0);
    return ShiftMatch{shift, overlap, r, t_of(r, overlap), 1.0};
}

std::vector<ShiftMatch> matches_without_chance(const YearSeries& series, const YearSeries& other, int least_overlap) {
    std::vector<ShiftMatch> matches;
    if (series.size() == 0 || other.size() == 0) {
        return matches;
    }
    const Summed a(series);
    const Summed b(other);
    const int lowest = other.first_year - series.last_year() + least_overlap - 1;
    const int highest = other.last_year() - series.first_year - least_overlap + 1;
    for (int shift = lowest; shift <= highest; ++shift) {
        const int first = std::max(series.first_year + shift, other.first_year);
        const int last = std::min(series.last_year() + shift, other.last_year());
        if (last < first) {
            continue;
        }
        if (const auto match = match_at(a, first - shift - series.first_year, b, first - other.first_year,
                                        last - first + 1, shift, least_overlap)) {
            matches.push_back(*match);
        }
    }
    return matches;
}

void add_chances(std::vector<ShiftMatch>& matches, const YearSeries& series, const YearSeries& other) {
    const double independent = matches.empty() ? 1.0 : independent_share(lag_one(series), lag_one(other));
    for (ShiftMatch& match : matches) {
        match.chance = chance_at(match.r, match.overlap, independent);
    }
}

void keep_best(std::vector<ShiftMatch>& matches, std::size_t most) {
    std::ranges::stable_sort(matches, std::ranges::greater(), &ShiftMatch::t);
    matches.resize(std::min(most, matches.size()));
}

std::vector<RankedMatch> with_chance_of_best(const std::vector<ShiftMatch>& matches, double positions) {
    std::vector<RankedMatch> result;
    result.reserve(matches.size());
    for (const ShiftMatch& match : matches) {
        result.push_back({match, best_of(match.chance, positions)});
    }
    return result;
}

} // namespace

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
    std::vector<ShiftMatch> matches = matches_without_chance(series, other, least_overlap);
    add_chances(matches, series, other);
    return matches;
}

std::vector<RankedMatch> ranked(std::vector<ShiftMatch> matches, std::size_t most) {
    const auto positions = static_cast<double>(matches.size());
    keep_best(matches, most);
    return with_chance_of_best(matches, positions);
}

std::vector<RankedMatch> best_shifts(const YearSeries& series, const YearSeries& other, int least_overlap,
                                     std::size_t most) {
    std::vector<ShiftMatch> matches = matches_without_chance(series, other, least_overlap);
    const auto positions = static_cast<double>(matches.size());
    keep_best(matches, most);
    add_chances(matches, series, other);
    return with_chance_of_best(matches, positions);
}

} // namespace pithward::dating
