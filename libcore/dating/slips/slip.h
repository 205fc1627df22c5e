#pragma once

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
    [[nodiscard]] int ring_year() const { return kind == Kind::RingMissing ? year - 1 : year; }
    friend bool operator==(const Slip&, const Slip&) = default;
};

} // namespace pithward::dating
