#pragma once

#include "app/picture/marks_layer.h"

#include <QPainter>
#include <QPen>

namespace pithward::picture {

/// Draws lines twice: the casing first, the line on top, with the same dashes.
class CasedPen {
public:
    CasedPen(QPainter& painter, const MarksStyle& style, const QColor& ink, double width, LineForm form)
        : painter_(painter)
        , over_(pen(ink, width * style.weight, form, style.weight))
        , under_(pen(style.casing, (width + 2.0) * style.weight, form, style.weight)) {}

    void draw(const QPolygonF& line) {
        if (line.size() > 1) {
            painter_.setPen(under_);
            painter_.drawPolyline(line);
            painter_.setPen(over_);
            painter_.drawPolyline(line);
        }
    }
    void draw(const QLineF& line) { draw(QPolygonF{line.p1(), line.p2()}); }

private:
    static QPen pen(const QColor& ink, double width, LineForm form, double weight) {
        QPen made(ink, width);
        made.setCapStyle(Qt::FlatCap);
        made.setJoinStyle(Qt::RoundJoin);
        const auto dashes = [&](double on, double off) {
            made.setDashPattern({on * weight / width, off * weight / width}); // a pattern counts in pen widths
        };
        if (form == LineForm::Dashed) {
            dashes(9.0, 4.0);
        } else if (form == LineForm::Sparse) {
            dashes(4.0, 6.0);
        }
        return made;
    }

    QPainter& painter_;
    QPen over_;
    QPen under_;
};

} // namespace pithward::picture
