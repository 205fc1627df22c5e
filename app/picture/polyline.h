#pragma once

#include <QPointF>
#include <QPolygonF>
#include <utility>

namespace pithward::picture {

/// Geometry of open polylines, for drawing and for pointing.

/// The place of a polyline that is nearest to a point.
struct Foot {
    double along = 0.0;    ///< Length from the first point to it.
    double distance = 0.0; ///< From the point to it.
    QPointF at;
    QPointF direction; ///< Unit vector of the polyline there.
};

/// Requires at least one point.
[[nodiscard]] Foot foot_of(const QPolygonF& line, QPointF point);
[[nodiscard]] double length_of(const QPolygonF& line);
/// The part from one length to another; empty when nothing is left.
[[nodiscard]] QPolygonF piece_of(const QPolygonF& line, double from, double to);
/// What is left of a line on the two sides when `bare` is taken away on either side of the place nearest to a point.
[[nodiscard]] std::pair<QPolygonF, QPolygonF> split_around(const QPolygonF& line, QPointF point, double bare);

/// The unit normal of a direction that points up on the screen (left for an upright direction).
[[nodiscard]] QPointF upward_normal(QPointF direction);

} // namespace pithward::picture
