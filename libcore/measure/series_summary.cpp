#include "libcore/measure/series_summary.h"

namespace pithward {

SeriesSummary summary_of(const RingSeries& series) {
    SeriesSummary summary;
    for (const Ring& ring : series.rings) {
        ++summary.rings;
        summary.absent += ring.absent ? 1 : 0;
        if (ring.width) {
            ++summary.measured;
            summary.length += *ring.width;
        }
    }
    if (summary.measured > 0) {
        summary.mean = summary.length / summary.measured;
    }
    return summary;
}

} // namespace pithward
