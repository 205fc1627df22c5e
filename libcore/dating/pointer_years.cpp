#include "libcore/dating/chronology.h"

#include <cmath>

namespace pithward::dating {

std::vector<PointerYear> pointer_years(const SiteTable& widths) {
    constexpr int years_before = 4;
    constexpr double least_change = 0.1;
    constexpr double least_share = 0.8;
    constexpr int fewest_series = 10;
    std::vector<PointerYear> result;
    for (int y = years_before; y < widths.years(); ++y) {
        int series = 0;
        int wide = 0;
        int narrow = 0;
        for (int i = 0; i < widths.series(); ++i) {
            const double before = widths.values.col(i).segment(y - years_before, years_before).mean();
            const double width = widths.values(y, i);
            if (std::isnan(before) || std::isnan(width) || before <= 0.0) {
                continue;
            }
            ++series;
            wide += width > (1.0 + least_change) * before ? 1 : 0;
            narrow += width < (1.0 - least_change) * before ? 1 : 0;
        }
        const int most = std::max(wide, narrow);
        if (series >= fewest_series && most >= least_share * series) {
            result.push_back({widths.first_year + y, wide > narrow, static_cast<double>(most) / series, series});
        }
    }
    return result;
}

} // namespace pithward::dating
