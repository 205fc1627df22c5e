#include "libcore/dating/pair_results.h"

#include "libcore/dating/pairs.h"
#include "libcore/dating/student.h"

#include <cmath>

namespace pithward::dating {

std::vector<PairResult> pair_results(const SiteTable& indices, const Work& work) {
    const PairCorrelations dated = pair_correlations(indices, least_pair_overlap);
    const PairMatches best = every_pair_at_every_shift(indices, least_pair_overlap, work);
    const int n = indices.series();
    std::vector<double> persistence;
    persistence.reserve(static_cast<std::size_t>(n));
    for (int i = 0; i < n; ++i) {
        persistence.push_back(lag_one(indices.column(i)));
    }
    std::vector<PairResult> results;
    for (int i = 0; i < n; ++i) {
        for (int j = i + 1; j < n; ++j) {
            PairResult pair{static_cast<std::size_t>(i), static_cast<std::size_t>(j), dated.overlap(i, j), {}, 0.0, {},
                            best.positions(i, j)};
            if (const double r = dated.r(i, j); !std::isnan(r)) {
                pair.r = r;
                pair.t = t_of(r, pair.overlap);
            }
            if (pair.positions > 0) {
                const double r = best.r(i, j);
                const int overlap = best.overlap(i, j);
                const double chance =
                    chance_at(r, overlap, independent_share(persistence[pair.first], persistence[pair.second]));
                pair.best = RankedMatch{{best.shift(i, j), overlap, r, t_of(r, overlap), chance},
                                        best_of(chance, pair.positions)};
            }
            results.push_back(pair);
        }
    }
    return results;
}

} // namespace pithward::dating
