#include "app/picture/dating/chronology_sheet.h"

#include "app/picture/dating/ink.h"
#include "app/picture/dating/legend.h"

#include <algorithm>
#include <cmath>

namespace pithward::picture {

namespace {

constexpr double numbers_breadth = 64.0; ///< Breadth of the column of numbers on the left.
const QColor interval_tone(0xd9, 0xdd, 0xe0);
const QColor depth_tone(0xee, 0xf0, 0xf1);

/// A scale on the left: values from `low` to `high` upward over a box.
class Scale {
public:
    Scale(const QRectF& box, double low, double high)
        : box_(box)
        , low_(low)
        , high_(high > low ? high : low + 1.0) {}

    [[nodiscard]] double height(double value) const {
        return box_.bottom() - (value - low_) / (high_ - low_) * box_.height();
    }
    /// Numbers at whole steps, about five of them.
    void paint(QPainter& painter, const QString& name) const {
        painter.setFont(sheet_font(9.0));
        const double step = step_of(high_ - low_);
        const int digits = std::max(0, -static_cast<int>(std::floor(std::log10(step) + 1e-9)));
        const int last = static_cast<int>(std::floor(high_ / step + 1e-9));
        for (int k = static_cast<int>(std::ceil(low_ / step - 1e-9)); k <= last; ++k) {
            const double value = k * step;
            painter.setPen(QPen(soft_ink, 0.6));
            painter.drawLine(QPointF(box_.left() - 4.0, height(value)), QPointF(box_.left(), height(value)));
            painter.drawText(QRectF(box_.left() - numbers_breadth, height(value) - 6.0, numbers_breadth - 8.0, 12.0),
                             Qt::AlignRight | Qt::AlignVCenter, QString::number(value, 'f', digits));
        }
        painter.drawLine(box_.topLeft(), box_.bottomLeft());
        painter.setPen(dark_ink);
        painter.setFont(sheet_font(9.0, true));
        painter.drawText(QPointF(box_.left() + 6.0, box_.top() - 3.0), name);
    }

private:
    static double step_of(double reach) {
        const double power = std::pow(10.0, std::floor(std::log10(reach / 4.0)));
        for (const double times : {1.0, 2.0, 5.0}) {
            if (times * power * 5.0 >= reach) {
                return times * power;
            }
        }
        return 10.0 * power;
    }

    QRectF box_;
    double low_;
    double high_;
};

/// The values of the years as a series; `value` picks them.
template <typename Pick>
dating::YearSeries line_of(const dating::Chronology& chronology, Pick&& value) {
    dating::YearSeries line{chronology.years.empty() ? 0 : chronology.years.front().year,
                            Eigen::ArrayXd(static_cast<Eigen::Index>(chronology.years.size()))};
    std::ranges::transform(chronology.years, line.values.begin(),
                           [&](const dating::ChronologyYear& year) { return value(year).value_or(dating::none); });
    return line;
}

void paint_interval(QPainter& painter, const YearAxis& axis, const Scale& scale, const dating::Chronology& chronology) {
    const double half = 0.5 * (axis.at(1.0) - axis.at(0.0));
    painter.setPen(Qt::NoPen);
    for (const dating::ChronologyYear& year : chronology.years) {
        if (year.low && year.high) {
            const double top = scale.height(*year.high);
            painter.fillRect(QRectF(axis.at(year.year) - half, top, 2.0 * half + 0.1, scale.height(*year.low) - top),
                             interval_tone);
        }
    }
}

/// A small triangle above a year of wide rings, below one of narrow rings.
void paint_pointer(QPainter& painter, double x, double y, bool wide) {
    const double size = wide ? -5.0 : 5.0;
    painter.setPen(QPen(dark_ink, 0.8));
    painter.setBrush(wide ? QBrush(Qt::white) : QBrush(dark_ink));
    painter.drawPolygon(QPolygonF{{x, y + size}, {x - 3.5, y}, {x + 3.5, y}});
    painter.setBrush(Qt::NoBrush);
}

void paint_values(QPainter& painter, const YearAxis& axis, const QRectF& box, const dating::Chronology& chronology) {
    const auto value = [](const dating::ChronologyYear& year) { return year.value; };
    const dating::YearSeries line = line_of(chronology, value);
    double low = 1.0;
    double high = 1.0;
    for (const dating::ChronologyYear& year : chronology.years) {
        low = std::min({low, year.low.value_or(low), year.value.value_or(low)});
        high = std::max({high, year.high.value_or(high), year.value.value_or(high)});
    }
    const Scale scale(box, low, high);
    paint_interval(painter, axis, scale, chronology);
    paint_series(painter, axis, line, QPen(dark_ink, 1.1), [&](double v) { return scale.height(v); });
    for (const dating::PointerYear& year : chronology.pointer_years) {
        if (const double v = line.at(year.year); !std::isnan(v)) {
            paint_pointer(painter, axis.at(year.year), scale.height(v) + (year.wide ? -5.0 : 5.0), year.wide);
        }
    }
    scale.paint(painter, QStringLiteral("ring-width index"));
}

void paint_depth(QPainter& painter, const YearAxis& axis, const QRectF& box, const dating::Chronology& chronology) {
    const auto series = [](const dating::ChronologyYear& year) { return std::optional<double>(year.series); };
    const auto trees = [](const dating::ChronologyYear& year) { return std::optional<double>(year.trees); };
    const dating::YearSeries line = line_of(chronology, series);
    const Scale scale(box, 0.0, line.size() == 0 ? 1.0 : line.values.maxCoeff());
    const double half = 0.5 * (axis.at(1.0) - axis.at(0.0));
    for (int k = 0; k < line.size(); ++k) {
        const double top = scale.height(line.values(k));
        painter.fillRect(QRectF(axis.at(line.first_year + k) - half, top, 2.0 * half + 0.1, box.bottom() - top),
                         depth_tone);
    }
    const auto height = [&](double v) { return scale.height(v); };
    paint_series(painter, axis, line, QPen(soft_ink, 0.8), height);
    paint_series(painter, axis, line_of(chronology, trees), QPen(dark_ink, 1.2, Qt::DashLine), height);
    scale.paint(painter, QStringLiteral("series (grey) and trees (dashed)"));
}

void paint_signal(QPainter& painter, const YearAxis& axis, const QRectF& box, const dating::Chronology& chronology) {
    const Scale scale(box, 0.0, 1.0);
    painter.setPen(QPen(soft_ink, 0.8, Qt::DotLine));
    const double usual = scale.height(dating::usual_least_eps);
    painter.drawLine(QPointF(box.left(), usual), QPointF(box.right(), usual));
    QPolygonF line;
    for (const dating::WindowVariance& window : chronology.running) {
        if (!window.variance.eps) {
            continue;
        }
        const QPointF at(axis.at(0.5 * (window.from + window.to)), scale.height(*window.variance.eps));
        painter.setPen(QPen(mean_ink, 1.0));
        painter.drawLine(QPointF(axis.at(window.from), at.y()), QPointF(axis.at(window.to), at.y()));
        if (window.variance.eps_low && window.variance.eps_high) {
            painter.drawLine(QPointF(at.x(), scale.height(*window.variance.eps_low)),
                             QPointF(at.x(), scale.height(*window.variance.eps_high)));
        }
        line.append(at);
    }
    painter.setPen(QPen(dark_ink, 1.0));
    painter.drawPolyline(line);
    painter.setBrush(dark_ink);
    for (const QPointF& at : line) {
        painter.drawEllipse(at, 2.2, 2.2);
    }
    painter.setBrush(Qt::NoBrush);
    scale.paint(painter, QStringLiteral("expressed population signal, each over its window"));
}

void paint_head(QPainter& painter, const YearAxis& axis, const QRectF& head, const QString& title) {
    paint_title(painter, title);
    Legend legend(painter, head.top() + 38.0);
    legend.add_line(QStringLiteral("mean of the indices"), QPen(dark_ink, 1.1));
    legend.add(QStringLiteral("90 % interval by drawing trees anew"), 24.0,
               [&](const QRectF& place) { painter.fillRect(place, interval_tone); });
    legend.add(QStringLiteral("most trees wide"), 10.0,
               [&](const QRectF& place) { paint_pointer(painter, place.center().x(), place.bottom() - 2.0, true); });
    legend.add(QStringLiteral("most trees narrow"), 10.0,
               [&](const QRectF& place) { paint_pointer(painter, place.center().x(), place.top() + 3.0, false); });
    legend.add_line(QStringLiteral("0.85, the usual least signal"), QPen(soft_ink, 0.8, Qt::DotLine));
    painter.setPen(soft_ink);
    painter.setFont(sheet_font(9.0));
    axis.paint_years(painter, head.bottom() - 2.0);
}

} // namespace

Sheet chronology_sheet(const dating::Chronology& chronology, std::optional<double> breadth) {
    const int first = chronology.years.empty() ? 0 : chronology.years.front().year;
    const int last = chronology.years.empty() ? 0 : chronology.years.back().year;
    const double left = sheet_margin + numbers_breadth;
    const YearAxis axis(first, last, left, left + breadth.value_or(YearAxis::breadth_for(first, last)));
    Sheet sheet{QStringLiteral("Site chronology"), axis.right() + sheet_margin, 70.0, {200.0, 100.0, 110.0}, {}, {}};
    sheet.paint_head = [axis, title = sheet.title](QPainter& painter, const QRectF& head) {
        paint_head(painter, axis, head, title);
    };
    sheet.paint_row = [axis, &chronology](QPainter& painter, const QRectF& row, std::size_t i) {
        axis.paint_lines(painter, row.top(), row.bottom());
        const QRectF box(axis.left(), row.top() + 12.0, axis.right() - axis.left(), row.height() - 24.0);
        (i == 0 ? paint_values : i == 1 ? paint_depth : paint_signal)(painter, axis, box, chronology);
    };
    return sheet;
}

} // namespace pithward::picture
