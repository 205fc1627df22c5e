#include "app/picture/dating/ink.h"

#include <cmath>

namespace pithward::picture {

const Inks& print_inks() {
    static const Inks inks{.ground = Qt::white,
                           .dark = dark_ink,
                           .soft = soft_ink,
                           .mean = mean_ink,
                           .warning = warning_ink,
                           .bar = QColor(0x55, 0x5b, 0x60),
                           .grid = QColor(0xdc, 0xdc, 0xdc),
                           .interval = QColor(0xd9, 0xdd, 0xe0),
                           .depth = QColor(0xee, 0xf0, 0xf1)};
    return inks;
}

void paint_series(QPainter& painter, const YearAxis& axis, const dating::YearSeries& series, const QPen& pen,
                  const std::function<double(double)>& height) {
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    QPolygonF line;
    const auto draw = [&] {
        if (line.size() == 1) { // A single year is a point.
            line.append(line.front() + QPointF(0.1, 0.0));
        }
        if (!line.isEmpty()) {
            painter.drawPolyline(line);
        }
        line.clear();
    };
    for (int k = 0; k < series.size(); ++k) {
        if (std::isnan(series.values(k))) {
            draw();
        } else {
            line.append(QPointF(axis.at(series.first_year + k), height(series.values(k))));
        }
    }
    draw();
}

} // namespace pithward::picture
