#include "app/picture/dating/agreement_bars.h"

#include <algorithm>

namespace pithward::picture {

namespace {

/// The years over which a segment's bar stands: half way to the middles of its neighbours.
std::pair<double, double> bar_years(std::span<const dating::Segment> segments, std::size_t i) {
    const auto middle = [&](std::size_t k) { return 0.5 * (segments[k].from + segments[k].to); };
    const double from = i == 0 ? segments[i].from - 0.5 : 0.5 * (middle(i - 1) + middle(i));
    const double to = i + 1 == segments.size() ? segments[i].to + 0.5 : 0.5 * (middle(i) + middle(i + 1));
    return {from, to};
}

QString signed_number(int years) {
    return years > 0 ? QStringLiteral("+%1").arg(years) : QStringLiteral("\u2212%1").arg(-years);
}

} // namespace

bool fits_elsewhere(const dating::Segment& segment) {
    constexpr double chance_in_a_hundred = 0.01;
    return segment.best_shift != 0 && segment.chance < chance_in_a_hundred;
}

void paint_agreement(QPainter& painter, const YearAxis& axis, const QRectF& place,
                     std::span<const dating::Segment> segments, const Inks& inks) {
    constexpr double gap = 0.6;
    constexpr double shallow = 3.0;
    for (std::size_t i = 0; i < segments.size(); ++i) {
        const dating::Segment& segment = segments[i];
        const auto [from, to] = bar_years(segments, i);
        const double left = axis.at(from) + gap;
        const double breadth = std::max(1.0, axis.at(to) - gap - left);
        if (!segment.r) {
            continue;
        }
        const bool moved = fits_elsewhere(segment);
        const bool as_dated = segment.best_shift == 0;
        const double size = *segment.r;
        const QRectF bar = size >= 0.0
                               ? QRectF(left, place.bottom() - size * place.height(), breadth, size * place.height())
                               : QRectF(left, place.bottom(), breadth, std::min(1.0, -size) * shallow);
        painter.setPen(QPen(moved ? inks.warning : as_dated ? inks.dark : inks.mean, 0.7));
        painter.setBrush(as_dated ? inks.bar : inks.ground);
        painter.drawRect(bar);
        if (moved) {
            painter.setFont(sheet_font(8.0));
            painter.setPen(inks.warning);
            painter.drawText(QRectF(left - 12.0, std::max(place.top() - 9.0, bar.top() - 10.0), breadth + 24.0, 10.0),
                             Qt::AlignCenter, signed_number(segment.best_shift));
        }
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(inks.soft, 0.5));
    if (!segments.empty()) {
        painter.drawLine(QPointF(axis.at(segments.front().from - 0.5), place.bottom()),
                         QPointF(axis.at(segments.back().to + 0.5), place.bottom()));
    }
}

} // namespace pithward::picture
