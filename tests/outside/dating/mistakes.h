#pragma once

#include "libcore/dating/site_table.h"
#include "libcore/dating/slips/slip.h"

#include <random>
#include <vector>

namespace pithward::test {

/// How a mistake is made.
enum class Mistake { Merged, Split, Lost };

/// A mistake that was put into a series: what must be found.
struct MadeMistake {
    Mistake how = Mistake::Merged;
    dating::Slip::Kind kind = dating::Slip::Kind::RingMissing;
    int year = 0; ///< As `dating::Slip::year` tells it.
};

/// Whole numbers, the same on every machine.
class Lot {
public:
    explicit Lot(unsigned seed)
        : generator_(seed) {}
    [[nodiscard]] int from_to(int low, int high) {
        return low + static_cast<int>(generator_() % static_cast<unsigned>(high - low + 1));
    }

private:
    std::mt19937 generator_;
};

/// Puts so many mistakes into a series, at least 25 years from either end and 32 from each other: two rings taken as
/// one, one taken as two (in shares of 30 to 70 %), or the narrowest of ten rings drawn at random left out. The last
/// year stays. Requires room: 60 rings for one mistake, 110 for two.
[[nodiscard]] std::vector<MadeMistake> make_mistakes(dating::YearSeries& widths, int how_many, Lot& lot);

} // namespace pithward::test
