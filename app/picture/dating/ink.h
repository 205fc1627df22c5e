#pragma once

#include "app/picture/dating/year_axis.h"
#include "libcore/dating/year_series.h"

#include <QFont>
#include <QPainter>
#include <functional>

namespace pithward::picture {

/// What a picture of series is drawn with. Told apart by tone and form, so that a print in grey says as much.
struct Inks {
    QColor ground;   ///< What all is drawn on.
    QColor dark;     ///< The series, and words.
    QColor soft;     ///< Words and lines beside it.
    QColor mean;     ///< The mean of the others.
    QColor warning;  ///< What wants a look.
    QColor bar;      ///< Inside of a full bar.
    QColor grid;     ///< Lines at years.
    QColor interval; ///< Between the limits of an interval.
    QColor depth;    ///< Under the number of series.
};

/// Dark on white, for files.
[[nodiscard]] const Inks& print_inks();

inline const QColor dark_ink(0x16, 0x1a, 0x1d);
inline const QColor soft_ink(0x6b, 0x70, 0x74);
inline const QColor mean_ink(0xb4, 0xb9, 0xbd);
inline const QColor warning_ink(0xa8, 0x32, 0x14);

[[nodiscard]] inline QFont sheet_font(double points, bool bold = false) {
    QFont font(QStringLiteral("Sans Serif"));
    font.setPixelSize(qRound(points)); // The painter's unit is the point.
    font.setBold(bold);
    return font;
}

/// Draws a series as a line, broken where it has no value. `height` gives the place of a value on the sheet.
void paint_series(QPainter& painter, const YearAxis& axis, const dating::YearSeries& series, const QPen& pen,
                  const std::function<double(double)>& height);

} // namespace pithward::picture
