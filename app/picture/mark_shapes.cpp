#include "app/picture/mark_shapes.h"

#include "app/picture/polyline.h"

#include <algorithm>
#include <cmath>

namespace pithward::picture {

namespace {

/// The traced curve, else a straight line in the boundary's direction across the wood.
QPolygonF line_of(const std::vector<ImagePoint>& curve, ImagePoint at, double tangent, double reach_px,
                  const ViewTransform& view) {
    if (curve.size() > 1) {
        return in_view(curve, view);
    }
    const ImagePoint half{reach_px * std::cos(tangent), reach_px * std::sin(tangent)};
    return in_view({at - half, at + half}, view);
}

/// The bare stretch grows with the breadth of the wood, but the marks stay in sight when a person is close.
double bare_for(double length) {
    return std::clamp(0.2 * length, 6.0, 48.0);
}

} // namespace

QPolygonF in_view(const std::vector<ImagePoint>& points, const ViewTransform& view) {
    QPolygonF line;
    line.reserve(static_cast<qsizetype>(points.size()));
    for (const ImagePoint& point : points) {
        line << view.to_view(point);
    }
    return line;
}

LegView leg_view(const Leg& leg, const std::vector<const Boundary*>& on_leg, const ViewTransform& view, double reach) {
    LegView seen{in_view(leg.points, view), reach, reach, reach};
    std::vector<double> up;
    std::vector<double> down;
    for (const Boundary* boundary : on_leg) {
        if (boundary->curve.size() > 1) {
            const QPointF at = view.to_view(boundary->at);
            const QPointF normal = upward_normal(foot_of(seen.line, at).direction);
            const double a = QPointF::dotProduct(view.to_view(boundary->curve.front()) - at, normal);
            const double b = QPointF::dotProduct(view.to_view(boundary->curve.back()) - at, normal);
            up.push_back(std::max(a, b));
            down.push_back(-std::min(a, b));
        }
    }
    const auto usual = [&](std::vector<double>& reaches) {
        if (reaches.empty()) {
            return reach;
        }
        const auto high = reaches.begin() + (std::ssize(reaches) - 1) * 9 / 10;
        std::ranges::nth_element(reaches, high);
        return std::max(0.0, *high);
    };
    // What was not traced to the edge may hide how broad the wood is; the two sides together tell.
    const double lean = 0.5 * (usual(up) - usual(down));
    seen.up = std::max(usual(up), reach + lean);
    seen.down = std::max(usual(down), reach - lean);
    return seen;
}

BoundaryMark boundary_mark(const Boundary& boundary, const MeasuredCore& core, const ViewTransform& view) {
    const QPolygonF line = line_of(boundary.curve, boundary.at, boundary.tangent, core.half_breadth_px, view);
    auto [upper, lower] = split_around(line, view.to_view(boundary.at), bare_for(length_of(line)));
    const auto height = [](const QPolygonF& part) { return part.isEmpty() ? 0.0 : part.boundingRect().center().y(); };
    if (height(lower) < height(upper)) {
        std::swap(upper, lower);
    }
    return {boundary.id,
            upper,
            lower,
            form_of(boundary.confidence, boundary.confirmation),
            boundary.confirmation != Confirmation::None,
            std::nullopt};
}

Lettering lettering_beside(const BoundaryMark& mark, QPointF at, const LegView& leg) {
    const QPointF up = upward_normal(foot_of(leg.line, at).direction);
    const auto height = [&](QPointF point) { return QPointF::dotProduct(point - at, up); };
    QPointF end = at;
    for (const QPointF& point : mark.upper) {
        if (height(point) > height(end)) {
            end = point;
        }
    }
    end += up * std::max(0.0, leg.up - height(end));
    return {{}, end + up * word_offset, up, {end + up * 1.0, end + up * beside_wood}, false};
}

TurnedDownMark turned_down_mark(const Candidate& candidate, const MeasuredCore& core, const ViewTransform& view) {
    const QPolygonF line = line_of(candidate.curve, candidate.at, candidate.tangent, core.half_breadth_px, view);
    const double whole = length_of(line);
    const double tip = std::clamp(0.14 * whole, 4.0, 26.0);
    TurnedDownMark mark{{piece_of(line, 0.0, tip), piece_of(line, whole - tip, whole)}, {}};
    for (int i = 0; i < 2; ++i) {
        if (mark.tips[i].size() > 1) {
            const QPointF middle = 0.5 * (mark.tips[i].front() + mark.tips[i].back());
            const QPointF along = foot_of(mark.tips[i], middle).direction;
            const QPointF across(-4.5 * along.y(), 4.5 * along.x());
            mark.strikes[i] = {middle - across, middle + across};
        }
    }
    return mark;
}

std::vector<QPolygonF> path_pieces(const QPolygonF& line, std::vector<double> crossings, const QRectF& exposed) {
    std::ranges::sort(crossings);
    crossings.insert(crossings.begin(), 0.0);
    crossings.push_back(length_of(line));
    std::vector<QPolygonF> pieces;
    for (std::size_t i = 1; i < crossings.size(); ++i) {
        const double span = crossings[i] - crossings[i - 1];
        const double bare = span < 12.0 ? 0.0 : std::min(0.3 * span, 9.0);
        QPolygonF piece = piece_of(line, crossings[i - 1] + bare, crossings[i] - bare);
        if (piece.size() > 1 && piece.boundingRect().adjusted(-1, -1, 1, 1).intersects(exposed)) {
            pieces.push_back(std::move(piece));
        }
    }
    return pieces;
}

EndMark end_mark(QPointF at, QPointF outward, double reach) {
    const QPointF across(outward.y(), -outward.x());
    return {{at - across * (reach + 4.0), at + across * (reach + 4.0)}, outward, at + outward * 14.0, true};
}

FindingMark finding_mark(const Finding& finding, int number, const LegView& leg, const ViewTransform& view) {
    constexpr double number_offset = 17.0;
    const Foot from = foot_of(leg.line, view.to_view(finding.at));
    const double to = finding.to ? foot_of(leg.line, view.to_view(*finding.to)).along : from.along;
    const QPointF down = -upward_normal(from.direction);
    FindingMark mark;
    mark.number = number;
    mark.away = down;
    QPolygonF stretch = piece_of(leg.line, std::min(from.along, to), std::max(from.along, to));
    if (stretch.size() < 2 || std::abs(to - from.along) < 8.0) { // a place: a wedge that points at it
        const QPointF tip = from.at + down * (leg.down + beside_wood);
        mark.line << tip + down * 8.0 - from.direction * 5.0 << tip << tip + down * 8.0 + from.direction * 5.0;
        mark.number_at = tip + down * number_offset;
        return mark;
    }
    const QPointF middle = foot_of(leg.line, 0.5 * (stretch.front() + stretch.back())).at;
    mark.number_at = middle + down * (leg.down + beside_wood + number_offset);
    stretch.translate(down * (leg.down + beside_wood + 6.0));
    stretch.prepend(stretch.front() - down * 6.0);
    stretch.append(stretch.back() - down * 6.0);
    mark.line = stretch;
    return mark;
}

AbsentMark absent_mark(QPointF at, const QString& text, const LegView& leg) {
    const Foot foot = foot_of(leg.line, at);
    const QPointF down = -upward_normal(foot.direction);
    const QPointF root = foot.at + down * (leg.down + beside_wood);
    AbsentMark mark;
    mark.away = down;
    mark.text = text;
    mark.text_at = root + down * (8.0 + word_offset);
    for (int i = 0; i < 2; ++i) {
        const QPointF beside = root + foot.direction * (i == 0 ? -2.5 : 2.5);
        mark.bars[i] = {beside, beside + down * 10.0};
    }
    return mark;
}

BreakMark break_mark(const Break& stretch, const LegView& leg, const ViewTransform& view) {
    BreakMark mark;
    mark.kind = stretch.kind;
    const ImagePoint ends[2] = {stretch.from, stretch.to};
    for (int i = 0; i < 2; ++i) {
        const Foot foot = foot_of(leg.line, view.to_view(ends[i]));
        const QPointF up = upward_normal(foot.direction);
        mark.edges[i] = {foot.at - up * leg.down, foot.at + up * leg.up};
    }
    return mark;
}

} // namespace pithward::picture
