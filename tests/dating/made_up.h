#pragma once

#include "libcore/dating/site_table.h"

#include <initializer_list>
#include <random>

namespace pithward::test {

/// Values from a list; NaN where a number is `dating::none`.
[[nodiscard]] Eigen::ArrayXd array(std::initializer_list<double> values);
[[nodiscard]] dating::YearSeries years_from(int first_year, std::initializer_list<double> values);

/// Random numbers, the same on every machine.
class Dice {
public:
    explicit Dice(unsigned seed)
        : generator_(seed) {}
    [[nodiscard]] double uniform() { return (static_cast<double>(generator_()) + 0.5) / 4294967296.0; }
    [[nodiscard]] double normal();

private:
    std::mt19937 generator_;
};

/// A made-up site: each width is exp(trend + common growth + own noise), log-normal; each tree has `cores` series that
/// share a part of their noise. `r` is the correlation of a series with the common growth.
struct MadeUpSite {
    int trees = 10;
    int cores = 2;
    int first_year = 1800;
    int years = 200;
    double r = 0.7;
    unsigned seed = 1;
};
[[nodiscard]] std::vector<dating::TreeSeries> made_up_site(const MadeUpSite& how);

/// Mistakes. Each keeps the last year, as the outer end is held.
void merge_rings(dating::YearSeries& widths, int year);                    ///< Rings `year` and `year` - 1 become one.
void split_ring(dating::YearSeries& widths, int year, double outer_share); ///< Ring `year` becomes two.
void lose_ring(dating::YearSeries& widths, int year);                      ///< Ring `year` is dropped without a trace.

} // namespace pithward::test
