#include "app/picture/polyline.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pithward::picture {

namespace {

double length(QPointF v) {
    return std::hypot(v.x(), v.y());
}

} // namespace

Foot foot_of(const QPolygonF& line, QPointF point) {
    Foot best{0.0, length(point - line.front()), line.front(), {1.0, 0.0}};
    if (line.size() > 1) {
        best.distance = std::numeric_limits<double>::infinity();
    }
    double passed = 0.0;
    for (qsizetype i = 1; i < line.size(); ++i) {
        const QPointF step = line[i] - line[i - 1];
        const double span = length(step);
        if (span <= 0.0) {
            continue;
        }
        const double share = std::clamp(QPointF::dotProduct(point - line[i - 1], step) / (span * span), 0.0, 1.0);
        const QPointF at = line[i - 1] + share * step;
        const double distance = length(point - at);
        if (distance < best.distance) {
            best = {passed + share * span, distance, at, step / span};
        }
        passed += span;
    }
    return best;
}

double length_of(const QPolygonF& line) {
    double sum = 0.0;
    for (qsizetype i = 1; i < line.size(); ++i) {
        sum += length(line[i] - line[i - 1]);
    }
    return sum;
}

QPolygonF piece_of(const QPolygonF& line, double from, double to) {
    QPolygonF piece;
    double passed = 0.0;
    for (qsizetype i = 1; i < line.size() && passed < to; ++i) {
        const QPointF step = line[i] - line[i - 1];
        const double span = length(step);
        const double a = std::max(from, passed);
        const double b = std::min(to, passed + span);
        if (span > 0.0 && a < b) {
            if (piece.isEmpty()) {
                piece << line[i - 1] + step * ((a - passed) / span);
            }
            piece << line[i - 1] + step * ((b - passed) / span);
        }
        passed += span;
    }
    return piece;
}

std::pair<QPolygonF, QPolygonF> split_around(const QPolygonF& line, QPointF point, double bare) {
    if (line.size() < 2) {
        return {};
    }
    const double along = foot_of(line, point).along;
    return {piece_of(line, 0.0, along - bare), piece_of(line, along + bare, length_of(line) + 1.0)};
}

QPointF upward_normal(QPointF direction) {
    const QPointF normal(direction.y(), -direction.x());
    const bool up = std::abs(normal.y()) > 1e-3 ? normal.y() < 0.0 : normal.x() < 0.0;
    return up ? normal : -normal;
}

} // namespace pithward::picture
