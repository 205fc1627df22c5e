#include "app/picture/boundary_painting.h"

#include "app/picture/cased_pen.h"

#include <algorithm>
#include <cmath>

namespace pithward::picture {

namespace {

double width_of(const BoundaryMark& mark) {
    if (mark.confirmed) {
        return 2.6;
    }
    return mark.form == LineForm::Sparse ? 1.3 : 1.7;
}

/// A bar across the outer end of a line, as a foot: what a person has confirmed.
QLineF foot_bar(const QPolygonF& line, QPointF other, double half) {
    const bool last_is_outer = std::hypot(line.back().x() - other.x(), line.back().y() - other.y()) >
                               std::hypot(line.front().x() - other.x(), line.front().y() - other.y());
    const QPointF tip = last_is_outer ? line.back() : line.front();
    const QPointF before = last_is_outer ? line[line.size() - 2] : line[1];
    const QPointF along = tip - before;
    const double length = std::max(1e-9, std::hypot(along.x(), along.y()));
    const QPointF across = QPointF(-along.y(), along.x()) * (half / length);
    return {tip - across, tip + across};
}

void paint_feet(CasedPen& pen, const BoundaryMark& mark, double half) {
    if (mark.upper.size() > 1 && mark.lower.size() > 1) {
        pen.draw(foot_bar(mark.upper, mark.lower.front(), half));
        pen.draw(foot_bar(mark.lower, mark.upper.front(), half));
    }
}

} // namespace

void paint_boundaries(QPainter& painter, const MarkSet& marks, const MarksStyle& style) {
    for (const BoundaryMark& mark : marks.boundaries) {
        CasedPen pen(painter, style, style.line, width_of(mark), mark.form);
        pen.draw(mark.upper);
        pen.draw(mark.lower);
        if (mark.confirmed) {
            paint_feet(pen, mark, 4.5 * style.weight);
        }
    }
    for (const BoundaryMark& mark : marks.boundaries) {
        if (mark.lettering) {
            CasedPen(painter, style, style.lettering, 1.0, LineForm::Whole).draw(mark.lettering->leader);
            paint_word(painter, mark.lettering->at, mark.lettering->away, mark.lettering->text, style.lettering, style,
                       mark.lettering->decade);
        }
    }
}

void paint_boundary_in_hand(QPainter& painter, const BoundaryMark& mark, QPointF at, const MarksStyle& style) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    CasedPen pen(painter, style, style.line, 3.4, LineForm::Whole);
    pen.draw(mark.upper);
    pen.draw(mark.lower);
    paint_feet(pen, mark, 8.0 * style.weight);
    if (mark.upper.isEmpty()) { // no line to be seen: a short one at its place
        pen.draw(QLineF(at - QPointF(0, 6), at + QPointF(0, 6)));
    }
}

} // namespace pithward::picture
