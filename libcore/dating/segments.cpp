#include "libcore/dating/segments.h"

#include "libcore/dating/agreement.h"
#include "libcore/dating/student.h"

#include <algorithm>

namespace pithward::dating {

namespace {

constexpr int shifts_looked_at = 2 * most_segment_shift + 1;
constexpr double longest_odds = 0.001;

Segment segment_of(const YearSeries& series, const YearSeries& other, int from, int to) {
    Segment segment{from, to, std::nullopt, 0, std::nullopt, 1.0};
    const YearSeries part{from, series.values.segment(from - series.first_year, to - from + 1)};
    const int enough = std::max(5, 2 * (to - from + 1) / 3);
    int looked_at = 0;
    double least_chance = 1.0;
    for (int shift = -most_segment_shift; shift <= most_segment_shift; ++shift) {
        const Agreement found = agreement(part, other, shift);
        if (found.overlap < enough || !found.r) {
            continue;
        }
        ++looked_at;
        if (shift == 0) {
            segment.r = found.r;
        }
        if (!segment.best_r || *found.r > *segment.best_r) {
            segment.best_r = found.r;
            segment.best_shift = shift;
            least_chance = found.chance;
        }
    }
    segment.chance = looked_at == 0 ? 1.0 : best_of(least_chance, looked_at);
    return segment;
}

} // namespace

std::vector<Segment> segments(const YearSeries& series, const YearSeries& other, int length, int step) {
    std::vector<Segment> result;
    const int first = series.first_year;
    for (int to = series.last_year(); series.size() > 0; to -= std::max(1, step)) {
        const int end = std::max(to, std::min(series.last_year(), first + length - 1));
        const int from = std::max(first, end - length + 1);
        result.push_back(segment_of(series, other, from, end));
        if (from == first) {
            break;
        }
    }
    std::ranges::reverse(result);
    return result;
}

int segment_length_for(double typical_r) {
    constexpr int shortest = 20;
    constexpr int longest = 100;
    for (int length = shortest; length < longest; length += 2) {
        if (correlation_at(longest_odds / shifts_looked_at, length) <= typical_r) {
            return length;
        }
    }
    return longest;
}

} // namespace pithward::dating
