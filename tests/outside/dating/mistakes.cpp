#include "tests/outside/dating/mistakes.h"

#include <algorithm>
#include <cmath>

namespace pithward::test {

using dating::YearSeries;

namespace {

constexpr int from_ends = 25;
constexpr int apart = 40; ///< Less twice what a place is moved by: at least 32.

/// Replaces rings `from` to `to` (indices, oldest first) and keeps the last year.
void replace_by(YearSeries& widths, int from, int to, const std::vector<double>& now) {
    const int after = widths.size() - to - 1;
    const int size = from + static_cast<int>(now.size()) + after;
    Eigen::ArrayXd values(size);
    values.head(from) = widths.values.head(from);
    values.tail(after) = widths.values.tail(after);
    for (std::size_t k = 0; k < now.size(); ++k) {
        values(from + static_cast<int>(k)) = now[k];
    }
    widths.first_year += widths.size() - size;
    widths.values = std::move(values);
}

/// A ring that has a width, as its outer neighbour and inner one do.
int measured_ring(const YearSeries& widths, int low, int high, Lot& lot) {
    constexpr int tries = 50;
    int k = low;
    for (int n = 0; n < tries; ++n) {
        k = lot.from_to(low, high);
        if (!std::isnan(widths.values(k) + widths.values(k - 1))) {
            break;
        }
    }
    return k;
}

int narrow_ring(const YearSeries& widths, int low, int high, Lot& lot) {
    constexpr int drawn = 10;
    int narrowest = measured_ring(widths, low, high, lot);
    for (int n = 1; n < drawn; ++n) {
        const int k = measured_ring(widths, low, high, lot);
        narrowest = widths.values(k) < widths.values(narrowest) ? k : narrowest;
    }
    return narrowest;
}

MadeMistake make_one(YearSeries& widths, int low, int high, Lot& lot) {
    MadeMistake made;
    made.how = static_cast<Mistake>(lot.from_to(0, 2));
    const bool lost = made.how == Mistake::Lost;
    const int k = lost ? narrow_ring(widths, low, high, lot) : measured_ring(widths, low, high, lot);
    made.year = widths.first_year + k + (lost ? 1 : 0);
    if (lost) {
        replace_by(widths, k, k, {});
    } else if (made.how == Mistake::Merged) {
        replace_by(widths, k - 1, k, {widths.values(k - 1) + widths.values(k)});
    } else {
        const double outer = widths.values(k) * lot.from_to(30, 70) / 100.0;
        replace_by(widths, k, k, {widths.values(k) - outer, outer});
        made.kind = dating::Slip::Kind::RingTooMany;
    }
    return made;
}

} // namespace

std::vector<MadeMistake> make_mistakes(YearSeries& widths, int how_many, Lot& lot) {
    const int n = widths.size();
    if (how_many == 1) {
        return {make_one(widths, from_ends, n - from_ends - 1, lot)};
    }
    // Two stretches of rings, of which any pair is far enough apart, about two evenly drawn places.
    const int last = n - from_ends - 1;
    int first = 0;
    int second = 0;
    do {
        first = lot.from_to(from_ends, last);
        second = lot.from_to(from_ends, last);
    } while (second - first < apart);
    constexpr int about = 4; // Rings from which the narrowest or a measured one is drawn, on both sides.
    const auto low = [&](int k) { return std::max(from_ends, k - about); };
    const auto high = [&](int k) { return std::min(last, k + about); };
    // The older one first: it leaves the years of what is younger as they are.
    const MadeMistake older = make_one(widths, low(first), high(first), lot);
    const int shifted = widths.size() - n;
    const MadeMistake younger = make_one(widths, low(second) + shifted, high(second) + shifted, lot);
    return {younger, older};
}

} // namespace pithward::test
