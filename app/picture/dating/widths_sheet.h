#pragma once

#include "app/picture/dating/sheet.h"
#include "libcore/dating/year_series.h"

namespace pithward::picture {

/// The widths of one core, in mm, over their years: a line, broken at gaps, with a mark at each locally absent ring.
/// `breadth`: of the years, in points.
[[nodiscard]] Sheet widths_sheet(dating::YearSeries widths, double breadth);

} // namespace pithward::picture
