#pragma once

#include "app/picture/dating/ink.h"
#include "app/picture/dating/year_axis.h"
#include "libcore/dating/slips/slip.h"

#include <QPainter>
#include <span>

namespace pithward::picture {

/// Marks each slip: an upright dashed line at the ring to put in or to take out, a bracket over its 90 % range, and
/// words beside it. The bracket points down for a ring to put in, up for one to take out.
void paint_slips(QPainter& painter, const YearAxis& axis, const QRectF& place, std::span<const dating::Slip> slips,
                 bool with_words, const Inks& inks = print_inks());

} // namespace pithward::picture
