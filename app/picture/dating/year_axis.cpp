#include "app/picture/dating/year_axis.h"

#include <algorithm>
#include <cmath>

namespace pithward::picture {

namespace {

constexpr double room_for_a_year = 36.0; ///< Points from one number to the next.

int first_multiple(int from, int step) {
    const int rest = from % step;
    return rest == 0 ? from : from - rest + (from > 0 ? step : 0);
}

} // namespace

YearAxis::YearAxis(int first, int last, double left, double right)
    : first_(first)
    , last_(std::max(first, last))
    , left_(left)
    , right_(right)
    , step_(5000) {
    const double year = (right - left) / (last_ - first_ + 1);
    for (const int step : {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000}) {
        if (year * step >= room_for_a_year) {
            step_ = step;
            break;
        }
    }
}

double YearAxis::at(double year) const {
    return left_ + (right_ - left_) * (year - first_ + 0.5) / (last_ - first_ + 1);
}

int YearAxis::year_at(double x) const {
    const double share = right_ > left_ ? (x - left_) / (right_ - left_) : 0.0;
    return std::clamp(first_ + static_cast<int>(std::floor(share * (last_ - first_ + 1))), first_, last_);
}

void YearAxis::paint_years(QPainter& painter, double bottom) const {
    constexpr double height = 12.0;
    for (int year = first_multiple(first_, step_); year <= last_; year += step_) {
        painter.drawText(QRectF(at(year) - room_for_a_year, bottom - height, 2.0 * room_for_a_year, height),
                         Qt::AlignHCenter | Qt::AlignBottom, QString::number(year));
    }
}

void YearAxis::paint_lines(QPainter& painter, double top, double bottom, const QColor& ink) const {
    painter.setPen(QPen(ink, 0.5));
    for (int year = first_multiple(first_, step_); year <= last_; year += step_) {
        painter.drawLine(QPointF(at(year), top), QPointF(at(year), bottom));
    }
}

double YearAxis::breadth_for(int first, int last) {
    constexpr double a_year = 3.2;
    constexpr double least = 680.0;
    constexpr double most = 13'500.0; // A page of a PDF is at most 14,400 points wide.
    return std::clamp(a_year * (static_cast<double>(last) - first + 1.0), least, most);
}

} // namespace pithward::picture
