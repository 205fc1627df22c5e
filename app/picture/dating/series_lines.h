#pragma once

#include "app/picture/dating/ink.h"
#include "app/picture/dating/year_axis.h"
#include "libcore/dating/crossdate.h"

#include <QPainter>

namespace pithward::picture {

/// A series (thin, dark) on the mean that it was held against (broad, pale), both in their own deviations.
void paint_on_others(QPainter& painter, const YearAxis& axis, const QRectF& place, const dating::DatedResult& series,
                     const Inks& inks = print_inks());

} // namespace pithward::picture
