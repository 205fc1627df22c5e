#pragma once

#include "app/picture/dating/ink.h"
#include "app/picture/dating/year_axis.h"
#include "libcore/dating/chronology.h"

#include <QPainter>
#include <QString>

namespace pithward::picture {

// What a site chronology is drawn as: bands under each other, each in its box with a scale on the left of it.

inline constexpr double scale_breadth = 64.0; ///< What a band needs on the left of its box.

/// The values with their 90 % interval and pointer years.
void paint_values(QPainter& painter, const YearAxis& axis, const QRectF& box, const dating::Chronology& chronology,
                  const QString& name, const Inks& inks = print_inks());
/// How many series and trees stand behind each year.
void paint_depth(QPainter& painter, const YearAxis& axis, const QRectF& box, const dating::Chronology& chronology,
                 const QString& name, const Inks& inks = print_inks());
/// The expressed population signal, each over its window.
void paint_signal(QPainter& painter, const YearAxis& axis, const QRectF& box, const dating::Chronology& chronology,
                  const QString& name, const Inks& inks = print_inks());

/// A small triangle above a year of wide rings, below one of narrow rings.
void paint_pointer(QPainter& painter, double x, double y, bool wide, const Inks& inks = print_inks());

} // namespace pithward::picture
