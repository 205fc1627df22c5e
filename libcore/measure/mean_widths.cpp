#include "libcore/measure/mean_widths.h"

namespace pithward {

std::map<Year, Millimetres> mean_widths(std::span<const RingSeries* const> series, int least) {
    struct Sum {
        double mm = 0.0;
        int count = 0;
    };
    std::map<Year, Sum> sums;
    for (const RingSeries* one : series) {
        for (const Ring& ring : one->rings) {
            if (ring.year && ring.width) {
                sums[*ring.year].mm += ring.width->value();
                ++sums[*ring.year].count;
            }
        }
    }
    std::map<Year, Millimetres> means;
    for (const auto& [year, sum] : sums) {
        if (sum.count >= least) {
            means[year] = Millimetres(sum.mm / sum.count);
        }
    }
    return means;
}

} // namespace pithward
