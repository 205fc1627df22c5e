#include "app/picture/measured_core.h"

#include "libcore/measure/measure.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace pithward::picture {

double half_breadth_px(const Reading& reading) {
    std::vector<double> reaches;
    for (const Boundary& boundary : reading.boundaries) {
        if (boundary.curve.size() > 1) {
            const ImagePoint a = boundary.curve.front() - boundary.at;
            const ImagePoint b = boundary.curve.back() - boundary.at;
            reaches.push_back(std::max(std::hypot(a.x, a.y), std::hypot(b.x, b.y)));
        }
    }
    if (reaches.empty()) {
        return 0.0;
    }
    // Nearly the greatest: a single curve that ran astray does not push the lettering away.
    const auto high = reaches.begin() + static_cast<std::ptrdiff_t>((reaches.size() - 1) * 9 / 10);
    std::ranges::nth_element(reaches, high);
    return *high;
}

MeasuredCore put_together(Reading reading, RingSeries series, double breadth_mm) {
    double reach = half_breadth_px(reading);
    if (!reading.path.legs.empty()) {
        const auto scale = reading.calibrations.find(reading.path.legs.front().scan);
        if (scale != reading.calibrations.end()) {
            constexpr double common_core_mm = 5.0; // most borers cut cores of 4.3 to 5.15 mm
            const double breadth = breadth_mm > 0.0 || reach > 0.0 ? breadth_mm : common_core_mm;
            reach = std::max(reach, 0.5 * breadth * scale->second.px_per_mm());
        }
    }
    return {std::move(reading), std::move(series), reach};
}

Outcome<MeasuredCore> measured(Reading reading, double breadth_mm) {
    auto series = measure(reading);
    if (!series) {
        return tl::unexpected(series.error());
    }
    return put_together(std::move(reading), std::move(*series), breadth_mm);
}

} // namespace pithward::picture
