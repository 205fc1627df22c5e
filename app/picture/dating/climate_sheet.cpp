#include "app/picture/dating/climate_sheet.h"

#include "app/picture/dating/ink.h"
#include "app/picture/dating/legend.h"

#include <algorithm>

namespace pithward::picture {

namespace {

constexpr double climate_left = 62.0;
constexpr double climate_breadth = 660.0;
constexpr double reach_of_r = 1.0;

/// A correlation with its interval; open where the lines are taken off.
void paint_correlation(QPainter& painter, const QRectF& box, double x, const results::WindowCorrelation& one) {
    const auto height = [&](double r) { return box.center().y() - 0.5 * box.height() * r / reach_of_r; };
    if (!one.r) {
        return;
    }
    painter.setPen(QPen(one.detrended ? soft_ink : dark_ink, 1.1));
    if (one.low && one.high) {
        painter.drawLine(QPointF(x, height(*one.low)), QPointF(x, height(*one.high)));
    }
    painter.setBrush(one.detrended ? QBrush(Qt::white) : QBrush(dark_ink));
    painter.drawEllipse(QPointF(x, height(*one.r)), 2.8, 2.8);
    painter.setBrush(Qt::NoBrush);
}

void paint_r_scale(QPainter& painter, const QRectF& box, const QString& name) {
    painter.setFont(sheet_font(9.0));
    for (int k = -4; k <= 4; k += 2) {
        const double r = 0.25 * k;
        const double y = box.center().y() - 0.5 * box.height() * r / reach_of_r;
        painter.setPen(QPen(k == 0 ? soft_ink : QColor(0xdc, 0xdc, 0xdc), k == 0 ? 0.8 : 0.5));
        painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
        painter.setPen(soft_ink);
        painter.drawText(QRectF(box.left() - 40.0, y - 6.0, 34.0, 12.0), Qt::AlignRight | Qt::AlignVCenter,
                         QString::number(r, 'f', 1));
    }
    painter.setPen(dark_ink);
    painter.setFont(sheet_font(9.0, true));
    painter.drawText(QPointF(box.left(), box.top() - 6.0), name);
    painter.setFont(sheet_font(9.0));
}

void paint_windows(QPainter& painter, const QRectF& row, const results::ClimateResponse& response) {
    const QRectF box(climate_left, row.top() + 20.0, climate_breadth, row.height() - 110.0);
    paint_r_scale(painter, box, QStringLiteral("correlation, months and seasons"));
    const double apart = box.width() / static_cast<double>(std::max<std::size_t>(1, response.as_is.size()));
    for (std::size_t i = 0; i < response.as_is.size(); ++i) {
        const double x = box.left() + apart * (static_cast<double>(i) + 0.5);
        paint_correlation(painter, box, x - 0.17 * apart, response.as_is[i]);
        if (i < response.detrended.size()) {
            paint_correlation(painter, box, x + 0.17 * apart, response.detrended[i]);
        }
        painter.save();
        painter.translate(x, box.bottom() + 6.0);
        painter.rotate(-90.0);
        painter.setPen(dark_ink);
        painter.drawText(QRectF(-84.0, -7.0, 82.0, 14.0), Qt::AlignRight | Qt::AlignVCenter,
                         QString::fromStdString(words_of(response.as_is[i].window)));
        painter.restore();
    }
}

void paint_running(QPainter& painter, const QRectF& row, const results::ClimateResponse& response) {
    const QRectF box(climate_left, row.top() + 20.0, climate_breadth, row.height() - 56.0);
    const auto& strongest = *response.strongest;
    paint_r_scale(painter, box,
                  QStringLiteral("%1%2, over stretches of %3 years")
                      .arg(QString::fromStdString(words_of(strongest.window)),
                           strongest.detrended ? QStringLiteral(", lines taken off") : QString())
                      .arg(results::running_years));
    const YearAxis axis(response.running.front().from, response.running.back().to, box.left(), box.right());
    for (const results::RunningCorrelation& one : response.running) {
        paint_correlation(painter, box, axis.at(0.5 * (one.from + one.to)), one.correlation);
    }
    painter.setPen(soft_ink);
    axis.paint_years(painter, box.bottom() + 16.0);
}

} // namespace

Sheet climate_sheet(const results::ClimateResponse& response) {
    Sheet sheet{
        QStringLiteral("Growth and climate"), climate_left + climate_breadth + sheet_margin, 60.0, {300.0}, {}, {}};
    if (!response.running.empty() && response.strongest) {
        sheet.rows.push_back(190.0);
    }
    sheet.paint_head = [title = sheet.title](QPainter& painter, const QRectF& head) {
        paint_title(painter, title);
        Legend legend(painter, head.top() + 38.0);
        for (const bool detrended : {false, true}) {
            const results::WindowCorrelation sample{{}, detrended, 0, 0.0, -0.9, 0.9};
            legend.add(detrended ? QStringLiteral("straight lines taken off") : QStringLiteral("as they are"), 10.0,
                       [&](const QRectF& place) {
                           paint_correlation(painter, place.adjusted(0.0, -3.0, 0.0, 3.0), place.center().x(), sample);
                       });
        }
        legend.add(QStringLiteral("line: 90 % interval by drawing blocks of years anew"), 0.0, [](const QRectF&) {});
    };
    sheet.paint_row = [&response](QPainter& painter, const QRectF& row, std::size_t i) {
        (i == 0 ? paint_windows : paint_running)(painter, row, response);
    };
    return sheet;
}

} // namespace pithward::picture
