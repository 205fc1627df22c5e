#include "app/picture/seen_stretch.h"

#include "app/picture/mark_shapes.h"
#include "app/picture/polyline.h"

#include <cmath>

namespace pithward::picture {

namespace {

/// The length of a leg on the wood; in pixels where its scan has no scale.
double leg_length(const Reading& reading, const Leg& leg) {
    const auto scale = reading.calibrations.find(leg.scan);
    double length = 0.0;
    for (std::size_t i = 1; i < leg.points.size(); ++i) {
        const ImagePoint way = leg.points[i] - leg.points[i - 1];
        length += scale == reading.calibrations.end()
                      ? std::hypot(way.x, way.y)
                      : scale->second.distance(leg.points[i - 1], leg.points[i]).value();
    }
    return length;
}

/// The legs on one scan as a line in the view, and which part of the whole path they are.
struct SeenLegs {
    QPolygonF line;
    double from = 0.0; ///< Share of the path at the line's start ...
    double to = 1.0;   ///< ... and at its end.
};

SeenLegs legs_on(const Reading& reading, const std::string& scan, const ViewTransform& view) {
    SeenLegs seen;
    double before = 0.0;
    double here = 0.0;
    double whole = 0.0;
    for (const Leg& leg : reading.path.legs) {
        const double length = leg_length(reading, leg);
        whole += length;
        if (leg.scan == scan && leg.points.size() > 1) { // a leg goes on where the one before it ends
            QPolygonF part = in_view(leg.points, view);
            part.translate(seen.line.isEmpty() ? QPointF() : seen.line.back() - part.front());
            seen.line << part;
            here += length;
        } else if (seen.line.isEmpty()) {
            before += length;
        }
    }
    if (whole > 0.0) {
        seen.from = before / whole;
        seen.to = (before + here) / whole;
    }
    return seen;
}

} // namespace

Stretch seen_stretch(const Reading& reading, const std::string& scan, const ViewTransform& view) {
    const SeenLegs legs = legs_on(reading, scan, view);
    if (legs.line.size() < 2) {
        return {};
    }
    const double length = length_of(legs.line);
    const QPointF way = legs.line.back() - legs.line.front();
    const QPointF middle(0.5 * view.view().width(), 0.5 * view.view().height());
    const bool upright = std::abs(way.y()) > std::abs(way.x());
    const QPointF half = upright ? QPointF(0.0, middle.y()) : QPointF(middle.x(), 0.0);
    const auto share_at = [&](QPointF at) {
        const Foot foot = foot_of(legs.line, at);
        // Beyond an end the path is taken to go on straight.
        const double along = foot.along + QPointF::dotProduct(at - foot.at, foot.direction);
        return legs.from + along / length * (legs.to - legs.from);
    };
    const Stretch seen{share_at(middle - half), share_at(middle + half)};
    return length > 0.0 && std::abs(seen.to - seen.from) > 1e-9 ? seen : Stretch{};
}

} // namespace pithward::picture
