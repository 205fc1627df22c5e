#include "app/picture/dating/growth_sheet.h"

#include "app/picture/dating/ink.h"
#include "app/picture/dating/legend.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <utility>

namespace pithward::picture {

namespace {

constexpr double growth_left = 70.0;
constexpr double growth_breadth = 600.0;
constexpr double growth_row = 112.0;
const QColor growth_depth_tone(0xe4, 0xe7, 0xe9);

/// A round step of which at most four fit.
double growth_step(double greatest) {
    double step = std::pow(10.0, std::floor(std::log10(std::max(1e-3, greatest))));
    for (const double times : {0.2, 0.5, 1.0, 2.5}) {
        if (4.5 * times * step >= greatest) {
            return times * step;
        }
    }
    return 5.0 * step;
}

/// A scale from 0 with its name and numbers; answers with the height of a value.
std::function<double(double)> paint_growth_scale(QPainter& painter, const QRectF& box, double greatest,
                                                 const QString& name, bool whole) {
    const auto height = [box, greatest](double value) { return box.bottom() - value / greatest * box.height(); };
    const double step = whole ? std::max(1.0, std::ceil(growth_step(greatest))) : growth_step(greatest);
    const int digits = step >= 1.0 ? 0 : step >= 0.1 ? 1 : 2;
    painter.setFont(sheet_font(9.0));
    for (int k = 0; k * step <= greatest * (1.0 + 1e-9); ++k) {
        const double y = height(k * step);
        painter.setPen(QPen(QColor(0xdc, 0xdc, 0xdc), 0.5));
        painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
        painter.setPen(soft_ink);
        painter.drawText(QRectF(box.left() - 50.0, y - 6.0, 44.0, 12.0), Qt::AlignRight | Qt::AlignVCenter,
                         QString::number(k * step, 'f', digits));
    }
    painter.setPen(dark_ink);
    painter.setFont(sheet_font(9.0, true));
    painter.drawText(QPointF(box.left(), box.top() - 5.0), name);
    painter.setFont(sheet_font(9.0));
    return height;
}

using Means = std::vector<results::MeanGrowth>;

dating::YearSeries growth_line(const Means& means, bool area) {
    dating::YearSeries line{means.front().at,
                            Eigen::ArrayXd::Constant(means.back().at - means.front().at + 1, dating::none)};
    for (const results::MeanGrowth& one : means) {
        line.values(one.at - line.first_year) = area ? one.basal_area_mm2.value_or(dating::none) : one.width_mm;
    }
    return line;
}

void paint_growth_line(QPainter& painter, const YearAxis& axis, const QRectF& box, const dating::YearSeries& line,
                       const QString& name) {
    double greatest = 1e-3;
    for (const double value : line.values) {
        greatest = std::isnan(value) ? greatest : std::max(greatest, value);
    }
    paint_series(painter, axis, line, QPen(dark_ink, 1.0), paint_growth_scale(painter, box, greatest, name, false));
}

void paint_growth_depth(QPainter& painter, const YearAxis& axis, const QRectF& box, const Means& means) {
    const double most = std::ranges::max_element(means, {}, &results::MeanGrowth::cores)->cores;
    const double half = 0.5 * (axis.at(1.0) - axis.at(0.0));
    const double unit = box.height() / std::max(1.0, most);
    for (const results::MeanGrowth& one : means) {
        const double high = unit * one.cores;
        painter.fillRect(QRectF(axis.at(one.at) - half, box.bottom() - high, 2.0 * half + 0.1, high),
                         growth_depth_tone);
    }
    (void)paint_growth_scale(painter, box, std::max(1.0, most), QStringLiteral("cores"), true);
}

} // namespace

Sheet growth_sheet(std::vector<results::MeanGrowth> means, const QString& axis_name) {
    Sheet sheet{QString(), growth_left + growth_breadth + sheet_margin, 20.0, {}, {}, {}};
    sheet.paint_head = [](QPainter&, const QRectF&) {};
    sheet.paint_row = [](QPainter&, const QRectF&, std::size_t) {};
    if (means.empty()) {
        return sheet;
    }
    sheet.rows = {growth_row, growth_row, 0.6 * growth_row};
    const YearAxis axis(means.front().at, means.back().at, growth_left, growth_left + growth_breadth);
    sheet.paint_head = [axis, axis_name](QPainter& painter, const QRectF& head) {
        painter.setPen(soft_ink);
        painter.setFont(sheet_font(9.0));
        axis.paint_years(painter, head.bottom() - 4.0);
        painter.drawText(QPointF(sheet_margin - 18.0, head.bottom() - 6.0), axis_name);
    };
    const auto kept = std::make_shared<const Means>(std::move(means));
    sheet.paint_row = [axis, kept](QPainter& painter, const QRectF& row, std::size_t i) {
        axis.paint_lines(painter, row.top(), row.bottom());
        const QRectF box(growth_left, row.top() + 18.0, growth_breadth, row.height() - 24.0);
        if (i == 2) {
            paint_growth_depth(painter, axis, box, *kept);
        } else {
            paint_growth_line(painter, axis, box, growth_line(*kept, i == 1),
                              i == 0 ? QStringLiteral("mean ring width, mm")
                                     : QStringLiteral("mean basal area increment, mm\u00b2"));
        }
    };
    return sheet;
}

Sheet histogram_sheet(std::vector<results::YearCount> counts) {
    Sheet sheet{QString(), growth_left + growth_breadth + sheet_margin, 12.0, {130.0}, {}, {}};
    sheet.paint_head = [](QPainter&, const QRectF&) {};
    const auto kept = std::make_shared<const std::vector<results::YearCount>>(std::move(counts));
    sheet.paint_row = [kept](QPainter& painter, const QRectF& row, std::size_t) {
        if (kept->empty()) {
            return;
        }
        const QRectF box(growth_left, row.top() + 14.0, growth_breadth, row.height() - 34.0);
        const double most = std::ranges::max_element(*kept, {}, &results::YearCount::trees)->trees;
        const auto height = paint_growth_scale(painter, box, std::max(1.0, most), QStringLiteral("trees"), true);
        const YearAxis axis(kept->front().from, kept->back().to, box.left(), box.right());
        for (const results::YearCount& one : *kept) {
            const QRectF bar(QPointF(axis.at(one.from - 0.5) + 0.8, height(one.trees)),
                             QPointF(axis.at(one.to + 0.5) - 0.8, box.bottom()));
            painter.fillRect(bar, soft_ink);
        }
        painter.setPen(soft_ink);
        axis.paint_years(painter, box.bottom() + 15.0);
    };
    return sheet;
}

} // namespace pithward::picture
