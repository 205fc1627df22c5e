#include "app/picture/dating/widths_sheet.h"

#include "app/picture/dating/ink.h"
#include "app/picture/dating/legend.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pithward::picture {

namespace {

constexpr double widths_height = 96.0;
constexpr double widths_numbers = 34.0; ///< Breadth of the column of numbers.

/// A round step of which about three fit.
double width_step(double greatest) {
    for (const double step : {0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0}) {
        if (3.5 * step >= greatest) {
            return step;
        }
    }
    return 50.0;
}

void paint_widths(QPainter& painter, const YearAxis& axis, const QRectF& box, const dating::YearSeries& widths) {
    double greatest = 0.1;
    for (const double width : widths.values) {
        greatest = std::isnan(width) ? greatest : std::max(greatest, width);
    }
    const auto height = [&](double width) { return box.bottom() - width / greatest * box.height(); };
    const double step = width_step(greatest);
    painter.setFont(sheet_font(9.0));
    for (int k = 0; k * step <= greatest * (1.0 + 1e-9); ++k) {
        const double y = height(k * step);
        painter.setPen(QPen(QColor(0xdc, 0xdc, 0xdc), 0.5));
        painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
        painter.setPen(soft_ink);
        painter.drawText(QRectF(box.left() - widths_numbers, y - 6.0, widths_numbers - 5.0, 12.0),
                         Qt::AlignRight | Qt::AlignVCenter, QString::number(k * step, 'f', step < 1.0 ? 1 : 0));
    }
    paint_series(painter, axis, widths, QPen(dark_ink, 1.0), height);
    painter.setBrush(Qt::white);
    painter.setPen(QPen(warning_ink, 1.0));
    for (int k = 0; k < widths.size(); ++k) {
        if (widths.values(k) == 0.0) {
            painter.drawEllipse(QPointF(axis.at(widths.first_year + k), box.bottom()), 2.6, 2.6);
        }
    }
    painter.setBrush(Qt::NoBrush);
}

} // namespace

Sheet widths_sheet(dating::YearSeries widths, double breadth) {
    const double left = sheet_margin + widths_numbers;
    const YearAxis axis(widths.first_year, widths.last_year(), left, left + breadth);
    Sheet sheet{QString(), axis.right() + sheet_margin, 18.0, {widths_height}, {}, {}};
    sheet.paint_head = [axis](QPainter& painter, const QRectF& head) {
        painter.setFont(sheet_font(9.0));
        painter.setPen(soft_ink);
        painter.drawText(QPointF(head.left() + sheet_margin, head.bottom() - 4.0), QStringLiteral("mm"));
        axis.paint_years(painter, head.bottom() - 2.0);
    };
    sheet.paint_row = [axis, widths = std::move(widths)](QPainter& painter, const QRectF& row, std::size_t /*i*/) {
        axis.paint_lines(painter, row.top(), row.bottom());
        paint_widths(painter, axis,
                     QRectF(axis.left(), row.top() + 4.0, axis.right() - axis.left(), row.height() - 8.0), widths);
    };
    return sheet;
}

} // namespace pithward::picture
