#include "app/picture/marks_layer.h"

#include "app/picture/boundary_painting.h"
#include "app/picture/cased_pen.h"
#include "app/picture/mark_shapes.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace pithward::picture {

namespace {

struct Marks {
    Q_DECLARE_TR_FUNCTIONS(Marks)
};

void paint_turned_down(QPainter& painter, const MarkSet& marks, const MarksStyle& style) {
    CasedPen pen(painter, style, style.quiet, 1.0, LineForm::Whole);
    for (const TurnedDownMark& mark : marks.turned_down) {
        for (int i = 0; i < 2; ++i) {
            pen.draw(mark.tips[i]);
            pen.draw(mark.strikes[i]);
        }
    }
}

/// The bark end: a stout line across with teeth outward, as the rough side. The inner end: a chevron onward.
void paint_ends(QPainter& painter, const MarkSet& marks, const MarksStyle& style, const MarkWords& words) {
    if (marks.bark) {
        const EndMark& end = *marks.bark;
        const LineForm form = end.sure ? LineForm::Whole : LineForm::Dashed;
        CasedPen(painter, style, style.line, 3.0, form).draw(end.across);
        CasedPen teeth(painter, style, style.line, 1.6, LineForm::Whole);
        const int count = std::clamp(static_cast<int>(end.across.length() / (12.0 * style.weight)), 3, 9);
        for (int i = 0; i < count; ++i) {
            const QPointF root = end.across.pointAt((i + 0.5) / count);
            teeth.draw(QLineF(root, root + end.outward * (6.0 * style.weight)));
        }
        paint_word(painter, end.word_at, end.outward, end.sure ? words.bark : words.bark_unsure, style.line, style,
                   true);
    }
    if (marks.inner) {
        const EndMark& end = *marks.inner;
        const QPointF across(end.outward.y(), -end.outward.x());
        const QPointF tip = end.across.center() + end.outward * (9.0 * style.weight);
        const QPointF back = end.outward * (8.0 * style.weight);
        CasedPen(painter, style, style.line, 1.8, LineForm::Whole)
            .draw(
                QPolygonF{tip - back + across * (7.0 * style.weight), tip, tip - back - across * (7.0 * style.weight)});
        paint_word(painter, end.word_at, end.outward, words.inner, style.line, style);
    }
}

void paint_findings(QPainter& painter, const MarkSet& marks, const MarksStyle& style) {
    CasedPen pen(painter, style, style.notice, 1.8, LineForm::Whole);
    for (const FindingMark& mark : marks.findings) {
        pen.draw(mark.line);
        paint_word(painter, mark.number_at, mark.away, mark.numbers, style.notice, style, true);
    }
}

void paint_breaks(QPainter& painter, const MarkSet& marks, const MarksStyle& style) {
    CasedPen pen(painter, style, style.quiet, 1.4, LineForm::Whole);
    for (const BreakMark& mark : marks.breaks) {
        pen.draw(mark.edges[0]);
        pen.draw(mark.edges[1]);
        if (mark.kind == Break::Kind::LostWood) { // crossed out: nothing can be read between the edges
            pen.draw(QLineF(mark.edges[0].p1(), mark.edges[1].p2()));
            pen.draw(QLineF(mark.edges[0].p2(), mark.edges[1].p1()));
        }
    }
}

void paint_absent(QPainter& painter, const MarkSet& marks, const MarksStyle& style) {
    CasedPen pen(painter, style, style.line, 1.8, LineForm::Whole);
    for (const AbsentMark& mark : marks.absent) {
        pen.draw(mark.bars[0]);
        pen.draw(mark.bars[1]);
        paint_word(painter, mark.text_at, mark.away, mark.text, style.lettering, style);
    }
}

void paint_pith(QPainter& painter, const PithMark& pith, const MarksStyle& style) {
    const double r = 7.0 * style.weight;
    CasedPen pen(painter, style, style.line, 1.6, pith.inside ? LineForm::Whole : LineForm::Dashed);
    pen.draw(QLineF(pith.at - QPointF(r, 0), pith.at + QPointF(r, 0)));
    pen.draw(QLineF(pith.at - QPointF(0, r), pith.at + QPointF(0, r)));
}

} // namespace

MarkWords mark_words() {
    return {Marks::tr("bark"), Marks::tr("bark?"), Marks::tr("to pith"), Marks::tr("goes on elsewhere")};
}

void paint_marks(QPainter& painter, const MarkSet& marks, const MarksStyle& style, bool present) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    CasedPen path(painter, style, style.line, present ? 1.0 : 0.8, LineForm::Whole);
    for (const QPolygonF& piece : marks.path) {
        path.draw(piece);
    }
    if (present) {
        paint_breaks(painter, marks, style);
        paint_turned_down(painter, marks, style);
        paint_boundaries(painter, marks, style);
        paint_absent(painter, marks, style);
        paint_findings(painter, marks, style);
        if (marks.pith) {
            paint_pith(painter, *marks.pith, style);
        }
    }
    paint_ends(painter, marks, style, mark_words());
}

void paint_ring(QPainter& painter, const RingMark& ring, const QString& word, const MarksStyle& style) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    CasedPen pen(painter, style, style.line, 3.2, LineForm::Whole);
    for (const BoundaryMark& edge : ring.edges) {
        pen.draw(edge.upper);
        pen.draw(edge.lower);
    }
    pen.draw(ring.bracket);
    paint_word(painter, ring.word_at, ring.away, word, style.line, style, true);
}

void paint_finding(QPainter& painter, const FindingMark& finding, const MarksStyle& style) {
    painter.setRenderHint(QPainter::Antialiasing);
    CasedPen(painter, style, style.notice, 3.6, LineForm::Whole).draw(finding.line);
    paint_word(painter, finding.number_at, finding.away, finding.numbers, style.notice, style, true);
}

void paint_drawn_path(QPainter& painter, const std::vector<ImagePoint>& points, const QString& first_word,
                      const ViewTransform& view, const MarksStyle& style) {
    if (points.empty()) {
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    const QPolygonF line = in_view(points, view);
    CasedPen(painter, style, style.line, 1.4, LineForm::Dashed).draw(line);
    CasedPen tick(painter, style, style.line, 1.4, LineForm::Whole);
    for (qsizetype i = 0; i < line.size(); ++i) {
        // A short tick across the line at every point that was set.
        const QPointF next = line[std::min(i + 1, line.size() - 1)] - line[std::max<qsizetype>(i - 1, 0)];
        const double length = std::hypot(next.x(), next.y());
        const QPointF across = length > 0.0 ? QPointF(-next.y(), next.x()) / length : QPointF(0, 1);
        tick.draw(QLineF(line[i] - across * 6.0, line[i] + across * 6.0));
    }
    paint_word(painter, line.front() - QPointF(0, 18), QPointF(0, -1), first_word, style.line, style, true);
}

void paint_word(QPainter& painter, QPointF at, QPointF away, const QString& word, const QColor& ink,
                const MarksStyle& style, bool bold) {
    if (word.isEmpty()) {
        return;
    }
    QFont font = style.font;
    font.setBold(bold);
    const QFontMetricsF metrics(font);
    QPainterPath letters;
    const double width = metrics.horizontalAdvance(word);
    letters.addText(at.x() + 0.5 * width * (away.x() - 1.0), at.y() + 0.5 * metrics.capHeight(), font, word);
    QColor rim = style.casing;
    rim.setAlpha(235);
    painter.strokePath(letters, QPen(rim, 3.5 * style.weight, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.fillPath(letters, ink);
}

} // namespace pithward::picture
