#include "app/picture/dating/chronology_bands.h"

#include <algorithm>
#include <cmath>

namespace pithward::picture {

namespace {

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
    /// Numbers at whole steps, five of them at most.
    void paint(QPainter& painter, const QString& name, const Inks& inks) const {
        painter.setFont(sheet_font(9.0));
        const double step = step_of(high_ - low_, std::clamp(box_.height() / room_for_a_number, 1.0, 5.0));
        const int digits = std::max(0, -static_cast<int>(std::floor(std::log10(step) + 1e-9)));
        const int last = static_cast<int>(std::floor(high_ / step + 1e-9));
        for (int k = static_cast<int>(std::ceil(low_ / step - 1e-9)); k <= last; ++k) {
            const double value = k * step;
            painter.setPen(QPen(inks.soft, 0.6));
            painter.drawLine(QPointF(box_.left() - 4.0, height(value)), QPointF(box_.left(), height(value)));
            painter.drawText(QRectF(box_.left() - scale_breadth, height(value) - 6.0, scale_breadth - 8.0, 12.0),
                             Qt::AlignRight | Qt::AlignVCenter, QString::number(value, 'f', digits));
        }
        painter.drawLine(box_.topLeft(), box_.bottomLeft());
        painter.setPen(inks.dark);
        painter.setFont(sheet_font(9.0, true));
        painter.drawText(QPointF(box_.left() + 6.0, box_.top() - 3.0), name);
    }

private:
    static constexpr double room_for_a_number = 14.0;

    /// The least whole step that gives no more than so many of them.
    static double step_of(double reach, double most) {
        const double power = std::pow(10.0, std::floor(std::log10(reach / most)));
        for (const double times : {1.0, 2.0, 5.0}) {
            if (times * power * most >= reach) {
                return times * power;
            }
        }
        return 10.0 * power;
    }

    QRectF box_;
    double low_;
    double high_;
};

/// While it lives, what is painted stays over a box, so that years that are not shown are not seen beside it.
class OverBox {
public:
    OverBox(QPainter& painter, const QRectF& box)
        : painter_(painter) {
        constexpr double beyond = 12.0;
        painter_.save();
        painter_.setClipRect(box.adjusted(0.0, -beyond, 0.0, beyond), Qt::IntersectClip);
    }
    OverBox(const OverBox&) = delete;
    OverBox& operator=(const OverBox&) = delete;
    ~OverBox() { painter_.restore(); }

private:
    QPainter& painter_;
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

void paint_interval(QPainter& painter, const YearAxis& axis, const Scale& scale, const dating::Chronology& chronology,
                    const Inks& inks) {
    const double half = 0.5 * (axis.at(1.0) - axis.at(0.0));
    painter.setPen(Qt::NoPen);
    for (const dating::ChronologyYear& year : chronology.years) {
        if (year.low && year.high) {
            const double top = scale.height(*year.high);
            painter.fillRect(QRectF(axis.at(year.year) - half, top, 2.0 * half + 0.1, scale.height(*year.low) - top),
                             inks.interval);
        }
    }
}

} // namespace

void paint_pointer(QPainter& painter, double x, double y, bool wide, const Inks& inks) {
    const double size = wide ? -5.0 : 5.0;
    painter.setPen(QPen(inks.dark, 0.8));
    painter.setBrush(wide ? QBrush(inks.ground) : QBrush(inks.dark));
    painter.drawPolygon(QPolygonF{{x, y + size}, {x - 3.5, y}, {x + 3.5, y}});
    painter.setBrush(Qt::NoBrush);
}

void paint_values(QPainter& painter, const YearAxis& axis, const QRectF& box, const dating::Chronology& chronology,
                  const QString& name, const Inks& inks) {
    const auto value = [](const dating::ChronologyYear& year) { return year.value; };
    const dating::YearSeries line = line_of(chronology, value);
    double low = 1.0;
    double high = 1.0;
    for (const dating::ChronologyYear& year : chronology.years) {
        low = std::min({low, year.low.value_or(low), year.value.value_or(low)});
        high = std::max({high, year.high.value_or(high), year.value.value_or(high)});
    }
    const Scale scale(box, low, high);
    {
        const OverBox over(painter, box);
        paint_interval(painter, axis, scale, chronology, inks);
        paint_series(painter, axis, line, QPen(inks.dark, 1.1), [&](double v) { return scale.height(v); });
        for (const dating::PointerYear& year : chronology.pointer_years) {
            if (const double v = line.at(year.year); !std::isnan(v)) {
                paint_pointer(painter, axis.at(year.year), scale.height(v) + (year.wide ? -5.0 : 5.0), year.wide, inks);
            }
        }
    }
    scale.paint(painter, name, inks);
}

void paint_depth(QPainter& painter, const YearAxis& axis, const QRectF& box, const dating::Chronology& chronology,
                 const QString& name, const Inks& inks) {
    const auto series = [](const dating::ChronologyYear& year) { return std::optional<double>(year.series); };
    const auto trees = [](const dating::ChronologyYear& year) { return std::optional<double>(year.trees); };
    const dating::YearSeries line = line_of(chronology, series);
    const Scale scale(box, 0.0, line.size() == 0 ? 1.0 : line.values.maxCoeff());
    const double half = 0.5 * (axis.at(1.0) - axis.at(0.0));
    {
        const OverBox over(painter, box);
        for (int k = 0; k < line.size(); ++k) {
            const double top = scale.height(line.values(k));
            painter.fillRect(QRectF(axis.at(line.first_year + k) - half, top, 2.0 * half + 0.1, box.bottom() - top),
                             inks.depth);
        }
        const auto height = [&](double v) { return scale.height(v); };
        paint_series(painter, axis, line, QPen(inks.soft, 0.8), height);
        paint_series(painter, axis, line_of(chronology, trees), QPen(inks.dark, 1.2, Qt::DashLine), height);
    }
    scale.paint(painter, name, inks);
}

void paint_signal(QPainter& painter, const YearAxis& axis, const QRectF& box, const dating::Chronology& chronology,
                  const QString& name, const Inks& inks) {
    const Scale scale(box, 0.0, 1.0);
    {
        const OverBox over(painter, box);
        painter.setPen(QPen(inks.soft, 0.8, Qt::DotLine));
        const double usual = scale.height(dating::usual_least_eps);
        painter.drawLine(QPointF(box.left(), usual), QPointF(box.right(), usual));
        QPolygonF line;
        for (const dating::WindowVariance& window : chronology.running) {
            if (!window.variance.eps) {
                continue;
            }
            const QPointF at(axis.at(0.5 * (window.from + window.to)), scale.height(*window.variance.eps));
            painter.setPen(QPen(inks.mean, 1.0));
            painter.drawLine(QPointF(axis.at(window.from), at.y()), QPointF(axis.at(window.to), at.y()));
            if (window.variance.eps_low && window.variance.eps_high) {
                painter.drawLine(QPointF(at.x(), scale.height(*window.variance.eps_low)),
                                 QPointF(at.x(), scale.height(*window.variance.eps_high)));
            }
            line.append(at);
        }
        painter.setPen(QPen(inks.dark, 1.0));
        painter.drawPolyline(line);
        painter.setBrush(inks.dark);
        for (const QPointF& at : line) {
            painter.drawEllipse(at, 2.2, 2.2);
        }
        painter.setBrush(Qt::NoBrush);
    }
    scale.paint(painter, name, inks);
}

} // namespace pithward::picture
