#include "app/picture/dating/series_lines.h"

#include <algorithm>

namespace pithward::picture {

void paint_on_others(QPainter& painter, const YearAxis& axis, const QRectF& place, const dating::DatedResult& series,
                     const Inks& inks) {
    constexpr double reach = 3.2; // Deviations above and below the mean.
    const auto height = [&](double value) {
        return place.center().y() - 0.5 * place.height() * std::clamp(value / reach, -1.0, 1.0);
    };
    QPen broad(inks.mean, 3.0);
    broad.setJoinStyle(Qt::RoundJoin);
    paint_series(painter, axis, dating::in_deviations(series.others, series.index), broad, height);
    paint_series(painter, axis, dating::in_deviations(series.index, series.others), QPen(inks.dark, 0.9), height);
}

} // namespace pithward::picture
