#pragma once

#include <string>

namespace pithward::dating {

/// A ring too many or too few in a series, as the other series of the site show it. The outer end is held.
struct Slip {
    enum class Kind { RingMissing, RingTooMany };
    Kind kind = Kind::RingMissing;
    int year = 0; ///< Calendar year of the ring just outside: without other slips, the oldest that is rightly dated.
    int from = 0; ///< The 90 % range of `year`: the shortest that holds as much.
    int to = 0;
    double probability = 0.0; ///< That there is a slip of this kind here.

    /// The year of the ring to put in, or of the ring that was counted twice.
    [[nodiscard]] int ring_year() const { return ring_of(year); }

    /// Its 90 % range.
    [[nodiscard]] int ring_from() const { return ring_of(from); }
    [[nodiscard]] int ring_to() const { return ring_of(to); }

    friend bool operator==(const Slip&, const Slip&) = default;

private:
    [[nodiscard]] int ring_of(int year_outside) const {
        return kind == Kind::RingMissing ? year_outside - 1 : year_outside;
    }
};

/// In words: "ring 1929 is missing (1927 to 1931)", "ring 1929 is counted twice (1929 alone)".
[[nodiscard]] std::string words_of(const Slip& slip);

} // namespace pithward::dating
