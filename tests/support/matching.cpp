#include "tests/support/matching.h"

#include "libcore/measure/leg_line.h"

#include <algorithm>
#include <cmath>

namespace pithward::test {

namespace {

constexpr double reach_mm = 0.06;
constexpr double reach_px = 2.0;

} // namespace

double median(std::vector<double> values) {
    if (values.empty()) {
        return 0.0;
    }
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

Matching match(const Reading& reading, const demo::Truth& truth) {
    const double px_per_mm = truth.dpi / 25.4;
    const Calibration scale{.px_per_mm_x = px_per_mm, .px_per_mm_y = px_per_mm};
    const LegLine line(Leg{"", truth.path, {}}, scale);
    const double reach = std::max(reach_mm, reach_px / px_per_mm);

    std::vector<Match> pairs;
    for (std::size_t b = 0; b < reading.boundaries.size(); ++b) {
        for (std::size_t t = 0; t < truth.boundaries.size(); ++t) {
            const double error = line.along(reading.boundaries[b].at) - line.along(truth.boundaries[t].at);
            if (std::abs(error) <= reach) {
                pairs.push_back({b, t, error * px_per_mm});
            }
        }
    }
    std::ranges::sort(pairs, {}, [](const Match& pair) { return std::abs(pair.error_px); });

    Matching out;
    std::vector<bool> taken(reading.boundaries.size());
    std::vector<bool> met(truth.boundaries.size());
    for (const Match& pair : pairs) {
        if (!taken[pair.boundary] && !met[pair.truth]) {
            taken[pair.boundary] = met[pair.truth] = true;
            out.matches.push_back(pair);
            out.found += truth.boundaries[pair.truth].visible ? 1 : 0;
        }
    }
    out.visible = static_cast<int>(std::ranges::count(truth.boundaries, true, &demo::TrueBoundary::visible));
    out.proposed = static_cast<int>(reading.boundaries.size());
    out.spurious = static_cast<int>(std::ranges::count(taken, false));
    for (std::size_t b = 0; b < reading.boundaries.size(); ++b) {
        const bool outside = line.along(reading.boundaries[b].at) < line.along(truth.boundaries.front().at);
        out.in_bark += !taken[b] && outside ? 1 : 0;
    }
    std::ranges::sort(out.matches, {}, &Match::boundary);
    return out;
}

} // namespace pithward::test
