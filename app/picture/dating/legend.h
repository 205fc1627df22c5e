#pragma once

#include <QPainter>
#include <QPen>
#include <QString>
#include <functional>

namespace pithward::picture {

/// What stays free at the edges of a sheet, in points.
inline constexpr double sheet_margin = 24.0;

/// The title of a sheet, in its upper left corner.
void paint_title(QPainter& painter, const QString& title);

/// Paints samples of what a sheet shows, each with words, from left to right.
class Legend {
public:
    Legend(QPainter& painter, double top);

    /// `sample` paints into a box of this breadth.
    void add(const QString& words, double breadth, const std::function<void(const QRectF&)>& sample);
    void add_line(const QString& words, const QPen& pen);

private:
    QPainter& painter_;
    double top_;
    double x_ = sheet_margin;
};

} // namespace pithward::picture
