#include "app/picture/ring_places.h"

#include "app/picture/polyline.h"
#include "libcore/measure/measure.h"

#include <algorithm>

namespace pithward::picture {

namespace {

QPolygonF line_of(const Leg& leg) {
    QPolygonF line;
    for (const ImagePoint& point : leg.points) {
        line << QPointF(point.x, point.y);
    }
    return line;
}

struct NearestLeg {
    std::size_t index = 0;
    double distance = 0.0;
};

std::optional<NearestLeg> nearest_leg(const Reading& reading, const std::string& scan, ImagePoint at) {
    std::optional<NearestLeg> nearest;
    for (std::size_t i = 0; i < reading.path.legs.size(); ++i) {
        const Leg& leg = reading.path.legs[i];
        if (leg.scan != scan || leg.points.empty()) {
            continue;
        }
        const double distance = foot_of(line_of(leg), {at.x, at.y}).distance;
        if (!nearest || distance < nearest->distance) {
            nearest = NearestLeg{i, distance};
        }
    }
    return nearest;
}

} // namespace

std::optional<double> distance_to_path(const Reading& reading, const std::string& scan, ImagePoint at) {
    const auto leg = nearest_leg(reading, scan, at);
    return leg ? std::optional(leg->distance) : std::nullopt;
}

std::optional<int> ring_at(const MeasuredCore& core, const std::string& scan, ImagePoint at, double reach_px) {
    const auto leg = nearest_leg(core.reading, scan, at);
    if (!leg || leg->distance > reach_px) {
        return std::nullopt;
    }
    const auto place = place_on_path(core.reading, leg->index, at);
    if (!place) {
        return std::nullopt;
    }
    return ring_at_place(core, *place);
}

std::optional<int> ring_at_place(const MeasuredCore& core, Millimetres place) {
    const auto& placed = core.series.boundaries;
    const auto inner = std::ranges::upper_bound(placed, place, {}, &PlacedBoundary::s);
    if (inner == placed.begin()) {
        return std::nullopt;
    }
    const int number = std::prev(inner)->ring_number;
    return ring_of(core.series, number) != nullptr ? std::optional(number) : std::nullopt;
}

std::optional<ImagePoint> place_of_ring(const MeasuredCore& core, const std::string& scan, int number) {
    const auto& placed = core.series.boundaries;
    const auto& boundaries = core.reading.boundaries;
    const auto on_scan = [&](std::size_t i) {
        const std::size_t leg = boundaries[i].leg;
        return leg < core.reading.path.legs.size() && core.reading.path.legs[leg].scan == scan;
    };
    for (std::size_t i = 0; i < placed.size() && i < boundaries.size(); ++i) {
        if (placed[i].ring_number < number || !on_scan(i)) {
            continue;
        }
        const bool closed = i + 1 < boundaries.size() && on_scan(i + 1) && placed[i].ring_number == number;
        return closed ? (boundaries[i].at + boundaries[i + 1].at) * 0.5 : boundaries[i].at;
    }
    return std::nullopt;
}

std::optional<std::size_t> leg_of_ring(const MeasuredCore& core, int number) {
    const auto& placed = core.series.boundaries;
    const auto& boundaries = core.reading.boundaries;
    for (std::size_t i = 0; i < placed.size() && i < boundaries.size(); ++i) {
        if (placed[i].ring_number >= number) {
            return boundaries[i].leg;
        }
    }
    return std::nullopt;
}

const Ring* ring_of(const RingSeries& series, int number) {
    const auto ring = std::ranges::find(series.rings, number, &Ring::number);
    return ring == series.rings.end() ? nullptr : &*ring;
}

} // namespace pithward::picture
