#include "app/picture/seen_stretch.h"

#include "app/picture/mark_shapes.h"
#include "app/picture/polyline.h"

#include <cmath>

namespace pithward::picture {

Stretch seen_stretch(const Reading& reading, const std::string& scan, const ViewTransform& view) {
    if (reading.path.legs.empty() || reading.path.legs.front().scan != scan ||
        reading.path.legs.front().points.size() < 2) {
        return {};
    }
    QPolygonF line;
    for (const Leg& leg : reading.path.legs) {
        if (leg.scan == scan && leg.points.size() > 1) { // a leg goes on where the one before it ends
            QPolygonF part = in_view(leg.points, view);
            part.translate(line.isEmpty() ? QPointF() : line.back() - part.front());
            line << part;
        }
    }
    const double length = length_of(line);
    const QPointF way = line.back() - line.front();
    const QPointF middle(0.5 * view.view().width(), 0.5 * view.view().height());
    const bool upright = std::abs(way.y()) > std::abs(way.x());
    const QPointF half = upright ? QPointF(0.0, middle.y()) : QPointF(middle.x(), 0.0);
    const auto share_at = [&](QPointF at) {
        const Foot foot = foot_of(line, at);
        // Beyond an end the path is taken to go on straight.
        return (foot.along + QPointF::dotProduct(at - foot.at, foot.direction)) / length;
    };
    const Stretch seen{share_at(middle - half), share_at(middle + half)};
    return length > 0.0 && std::abs(seen.to - seen.from) > 1e-9 ? seen : Stretch{};
}

} // namespace pithward::picture
