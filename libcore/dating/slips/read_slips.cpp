#include "libcore/dating/slips/read_slips.h"

#include <algorithm>
#include <array>

namespace pithward::dating {

namespace {

/// A change of the most probable shift, seen from the bark.
struct Change {
    int ring;    ///< The ring inside it, oldest first.
    int shift;   ///< The shift there.
    int outside; ///< That of the ring outside.
};

std::vector<int> most_probable_shifts(const Alignment& alignment) {
    std::vector<int> shifts;
    for (Eigen::Index k = 0; k < alignment.shift.rows(); ++k) {
        int best = 0;
        alignment.shift.row(k).maxCoeff(&best);
        shifts.push_back(best - most_shift);
    }
    return shifts;
}

std::vector<Change> changes_of(const std::vector<int>& shifts) {
    std::vector<Change> changes;
    for (int k = static_cast<int>(shifts.size()) - 2; k >= 0; --k) {
        if (shifts[k] != shifts[k + 1]) {
            changes.push_back({k, shifts[k], shifts[k + 1]});
        }
    }
    return changes;
}

/// The place with the greatest expected worth as an answer, where the right year is worth most, one within two years
/// less, and one within five years half of it. So a lone peak is taken, but not the highest of some scattered ones.
Eigen::Index worthiest(const Eigen::ArrayXd& expected) {
    constexpr std::array worth{4.0, 3.0, 3.0, 2.0, 2.0, 2.0};
    Eigen::Index best = 0;
    double greatest = -1.0;
    for (Eigen::Index k = 0; k < expected.size(); ++k) {
        double sum = worth[0] * expected(k);
        for (Eigen::Index d = 1; d < std::ssize(worth); ++d) {
            sum += worth[d] * ((k >= d ? expected(k - d) : 0.0) + (k + d < expected.size() ? expected(k + d) : 0.0));
        }
        if (sum > greatest) {
            greatest = sum;
            best = k;
        }
    }
    return best;
}

/// The slip of a kind among the years `from` to `to`.
Slip slip_among(Slip::Kind kind, const Eigen::ArrayXd& expected, int first_year, int from, int to) {
    const int low = std::clamp(from - first_year, 0, static_cast<int>(expected.size()) - 1);
    const int high = std::clamp(to - first_year, low, static_cast<int>(expected.size()) - 1);
    const auto part = expected.segment(low, high - low + 1);
    Slip slip;
    slip.kind = kind;
    slip.year = first_year + low + static_cast<int>(worthiest(part));
    const double total = part.sum();
    slip.probability = std::min(1.0, total);
    // The shortest range with nine tenths of it.
    constexpr double held = 0.9;
    int shortest = static_cast<int>(part.size()) + 1;
    double sum = 0.0;
    for (int a = 0, b = 0; a < part.size(); ++a) {
        while (b < part.size() && sum < held * total) {
            sum += part(b++);
        }
        if (sum >= held * total && b - a < shortest) {
            shortest = b - a;
            slip.from = first_year + low + a;
            slip.to = first_year + low + b - 1;
        }
        sum -= part(a);
    }
    slip.from = std::min(slip.from, slip.year);
    slip.to = std::max(slip.to, slip.year);
    return slip;
}

} // namespace

std::vector<Slip> read_slips(const Alignment& alignment, int first_ring_year, double least_probability) {
    const std::vector<int> shifts = most_probable_shifts(alignment);
    const std::vector<Change> changes = changes_of(shifts);
    std::vector<Slip> slips;
    constexpr int margin = 5; // The ring beside a slip may itself be shifted.
    for (std::size_t c = 0; c < changes.size(); ++c) {
        const int older = c + 1 < changes.size() ? (changes[c].ring + changes[c + 1].ring) / 2 : -margin;
        const int younger =
            c > 0 ? (changes[c].ring + changes[c - 1].ring) / 2 : static_cast<int>(shifts.size()) + margin;
        const bool too_many = changes[c].shift > changes[c].outside;
        const Slip slip = slip_among(too_many ? Slip::Kind::RingTooMany : Slip::Kind::RingMissing,
                                     too_many ? alignment.extra : alignment.missing, alignment.first_year,
                                     first_ring_year + older, first_ring_year + younger);
        if (slip.probability >= least_probability) {
            slips.push_back(slip);
        }
    }
    return slips;
}

int outer_shift(const Alignment& alignment) {
    const auto shifts = most_probable_shifts(alignment);
    return shifts.empty() ? 0 : shifts.back();
}

} // namespace pithward::dating
