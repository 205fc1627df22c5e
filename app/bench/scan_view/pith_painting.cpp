#include "app/bench/scan_view/pith_painting.h"

#include "app/picture/cased_pen.h"

#include <QPainter>
#include <cmath>

namespace pithward::bench {

namespace {

using picture::CasedPen;
using picture::LineForm;

QPolygonF line_in_view(const std::vector<ImagePoint>& points, const picture::ViewTransform& view) {
    QPolygonF line;
    for (const ImagePoint& point : points) {
        line << view.to_view(point);
    }
    return line;
}

void paint_cross(CasedPen& pen, QPointF at) {
    constexpr double arm = 9.0;
    pen.draw(QLineF(at - QPointF(arm, 0), at + QPointF(arm, 0)));
    pen.draw(QLineF(at - QPointF(0, arm), at + QPointF(0, arm)));
}

void paint_handle(CasedPen& pen, QPointF at) {
    constexpr double half = 3.5;
    pen.draw(QPolygonF(QRectF(at.x() - half, at.y() - half, 2.0 * half, 2.0 * half)));
}

} // namespace

void paint_pith_shape(QPainter& painter, const PithShape& shape, const QString& word,
                      const picture::ViewTransform& view, const picture::MarksStyle& style) {
    painter.setRenderHint(QPainter::Antialiasing);
    CasedPen sparse(painter, style, style.line, 1.2, LineForm::Sparse);
    for (const auto& ring : shape.rings) {
        sparse.draw(line_in_view(ring, view));
    }
    CasedPen whole(painter, style, style.line, 1.4, LineForm::Whole);
    for (const PithArc& arc : shape.arcs) {
        whole.draw(line_in_view(arc.line, view));
        paint_handle(whole, view.to_view(arc.handle));
    }
    QPointF word_at = view.to_view(shape.centre);
    QPointF away(0, -1);
    double gap = 18.0;
    if (shape.range) {
        constexpr double tick = 6.0;
        const QLineF bar(view.to_view(shape.range->front()), view.to_view(shape.range->back()));
        whole.draw(bar);
        const QLineF square = bar.normalVector().unitVector();
        const QPointF across(square.dx() * tick, square.dy() * tick);
        whole.draw(QLineF(bar.p1() - across, bar.p1() + across));
        whole.draw(QLineF(bar.p2() - across, bar.p2() + across));
        const double length = bar.length();
        away = length > 0.0 ? QPointF(bar.dx(), bar.dy()) / length : away;
        word_at = bar.p2();
        gap = 10.0 + 8.0 * std::abs(away.y());
    }
    if (!word.isEmpty()) {
        picture::paint_word(painter, word_at + away * gap, away, word, style.line, style, true);
    }
}

void paint_pith_preview(QPainter& painter, const std::vector<std::vector<ImagePoint>>& circles, ImagePoint centre,
                        const picture::ViewTransform& view, const picture::MarksStyle& style) {
    painter.setRenderHint(QPainter::Antialiasing);
    CasedPen dashed(painter, style, style.line, 1.4, LineForm::Dashed);
    for (const auto& circle : circles) {
        dashed.draw(line_in_view(circle, view));
    }
    CasedPen whole(painter, style, style.line, 1.6, LineForm::Whole);
    paint_cross(whole, view.to_view(centre));
}

} // namespace pithward::bench
