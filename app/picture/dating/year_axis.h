#pragma once

#include <QPainter>

namespace pithward::picture {

/// Calendar years across a picture.
class YearAxis {
public:
    /// Years `first` to `last` between two places, each with the same breadth.
    YearAxis(int first, int last, double left, double right);

    /// The middle of a year; halves lie between two.
    [[nodiscard]] double at(double year) const;
    /// The year at a place, of those that are shown.
    [[nodiscard]] int year_at(double x) const;
    [[nodiscard]] int first() const { return first_; }
    [[nodiscard]] int last() const { return last_; }
    [[nodiscard]] double left() const { return left_; }
    [[nodiscard]] double right() const { return right_; }

    /// Years in numbers, with their lower edge at `bottom`.
    void paint_years(QPainter& painter, double bottom) const;
    /// Thin upright lines at the years that have a number.
    void paint_lines(QPainter& painter, double top, double bottom, const QColor& ink = QColor(0xdc, 0xdc, 0xdc)) const;

    /// How wide a picture of so many years should be beside its margins, in points.
    [[nodiscard]] static double breadth_for(int first, int last);

private:
    int first_;
    int last_;
    double left_;
    double right_;
    int step_; ///< From one number to the next.
};

} // namespace pithward::picture
