#include "libimaging/boundary/wood/vessel_zone.h"

#include "libimaging/boundary/wood_look.h"

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double low_share = 0.15;  ///< Quantile of the ring that is its low ...
constexpr double high_share = 0.95; ///< ... and its high.
constexpr int least_columns = 8;    ///< Shorter rings are not looked at.

double latewood_of_ring(const std::vector<float>& line, int from, int to, double hold, double least) {
    const std::vector<double> ring(line.begin() + from, line.begin() + to);
    const double low = quantile(ring, low_share);
    const double high = quantile(ring, high_share);
    if (high - low < least) {
        return 0.0;
    }
    const auto half = static_cast<float>(0.5 * (low + high));
    int c = to - 1;
    while (c > from && line[static_cast<std::size_t>(c)] < half) { // the fall at the inner boundary itself
        --c;
    }
    int left = c; // The outermost column of the zone so far.
    for (; c >= from && left - c <= hold; --c) {
        if (line[static_cast<std::size_t>(c)] >= half) {
            left = c;
        }
    }
    return left > from ? left - from : 0.0;
}

} // namespace

std::vector<double> latewood_beside_vessels(const std::vector<float>& line, const std::vector<double>& boundaries,
                                            double hold, double least) {
    std::vector<double> columns(boundaries.empty() ? 0 : boundaries.size() - 1, 0.0);
    const int last = static_cast<int>(line.size());
    for (std::size_t k = 0; k < columns.size(); ++k) {
        const int from = std::clamp(static_cast<int>(std::lround(boundaries[k])), 0, last);
        const int to = std::clamp(static_cast<int>(std::lround(boundaries[k + 1])), 0, last);
        if (to - from >= least_columns) {
            columns[k] = latewood_of_ring(line, from, to, hold, least);
        }
    }
    return columns;
}

} // namespace pithward::boundary
