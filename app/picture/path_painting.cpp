#include "app/picture/path_painting.h"

#include "app/picture/cased_pen.h"
#include "app/picture/mark_shapes.h"
#include "app/picture/polyline.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace pithward::picture {

namespace {

/// The part of a stretch inside a rectangle; nothing where it passes by (Liang and Barsky, from memory).
std::optional<QLineF> clipped(const QLineF& line, const QRectF& room) {
    double from = 0.0;
    double to = 1.0;
    const auto side = [&](double start, double step, double low, double high) {
        if (step == 0.0) {
            return start >= low && start <= high;
        }
        const double a = (low - start) / step;
        const double b = (high - start) / step;
        from = std::max(from, std::min(a, b));
        to = std::min(to, std::max(a, b));
        return from <= to;
    };
    const bool inside =
        side(line.x1(), line.dx(), room.left(), room.right()) && side(line.y1(), line.dy(), room.top(), room.bottom());
    return inside ? std::optional(QLineF(line.pointAt(from), line.pointAt(to))) : std::nullopt;
}

/// The first bit of a line that is in sight, in the sense of the line.
std::optional<QLineF> first_in_sight(const QPolygonF& line, const QRectF& room) {
    for (qsizetype i = 1; i < line.size(); ++i) {
        const auto seen = clipped({line[i - 1], line[i]}, room);
        if (seen && seen->length() > 1.0) {
            return seen;
        }
    }
    return std::nullopt;
}

QString with_arrow(const QString& word, QPointF way) {
    if (std::abs(way.x()) >= std::abs(way.y())) {
        return way.x() < 0.0 ? QStringLiteral("← ") + word : word + QStringLiteral(" →");
    }
    return (way.y() < 0.0 ? QStringLiteral("↑ ") : QStringLiteral("↓ ")) + word;
}

void paint_way(QPainter& painter, const QPolygonF& line, const QString& word, double reach, const QRectF& room,
               const MarksStyle& style) {
    const auto seen = first_in_sight(line, room);
    if (!seen || room.contains(line.front())) {
        return;
    }
    const QPointF way = (seen->p1() - seen->p2()) / seen->length();
    const QString text = with_arrow(word, way);
    QFont font = style.font;
    font.setBold(true);
    const QFontMetricsF metrics(font);
    const QPointF half(0.5 * metrics.horizontalAdvance(text) + 8.0, metrics.height());
    QPointF at = seen->p1() - upward_normal(way) * (reach + 2.0 * word_offset); // the years are lettered above
    at.setX(std::clamp(at.x(), room.left() + half.x(), room.right() - half.x()));
    at.setY(std::clamp(at.y(), room.top() + half.y(), room.bottom() - half.y()));
    paint_word(painter, at, QPointF(0, -1), text, style.line, style, true);
}

} // namespace

void paint_bends(QPainter& painter, const Reading& reading, const std::string& scan, const ViewTransform& view,
                 const MarksStyle& style) {
    painter.setRenderHint(QPainter::Antialiasing);
    CasedPen tick(painter, style, style.line, 1.4, LineForm::Whole);
    for (std::size_t k = 0; k < reading.path.legs.size(); ++k) {
        const Leg& leg = reading.path.legs[k];
        if (leg.scan != scan) {
            continue;
        }
        const QPolygonF line = in_view(leg.points, view);
        for (qsizetype i = 0; i < line.size(); ++i) {
            const bool end = (k == 0 && i == 0) || (k + 1 == reading.path.legs.size() && i + 1 == line.size());
            if (end) {
                continue; // it has a mark of its own
            }
            const QPointF way = line[std::min(i + 1, line.size() - 1)] - line[std::max<qsizetype>(i - 1, 0)];
            const double length = std::hypot(way.x(), way.y());
            const QPointF across = length > 0.0 ? QPointF(-way.y(), way.x()) / length : QPointF(0, 1);
            tick.draw(QLineF(line[i] - across * 5.0, line[i] + across * 5.0));
        }
    }
}

void paint_ways_to_ends(QPainter& painter, const MeasuredCore& core, const std::string& scan, const ViewTransform& view,
                        const QRectF& room, const MarksStyle& style) {
    QPolygonF line;
    for (const Leg& leg : core.reading.path.legs) {
        if (leg.scan == scan) {
            line << in_view(leg.points, view);
        }
    }
    const MarkWords words = mark_words();
    const double reach = core.half_breadth_px * view.scale();
    const bool sure = core.reading.bark_end.probability >= sure_from;
    const auto& legs = core.reading.path.legs;
    const bool bark_here = !legs.empty() && legs.front().scan == scan;
    const bool inner_here = !legs.empty() && legs.back().scan == scan;
    paint_way(painter, line, !bark_here ? words.goes_on : sure ? words.bark : words.bark_unsure, reach, room, style);
    std::ranges::reverse(line);
    paint_way(painter, line, inner_here ? words.inner : words.goes_on, reach, room, style);
}

} // namespace pithward::picture
