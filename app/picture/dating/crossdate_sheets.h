#pragma once

#include "app/picture/dating/sheet.h"
#include "libcore/dating/crossdate.h"

#include <optional>

namespace pithward::picture {

/// Each series (thin, dark) on the mean that it was held against (broad, pale), both in their own deviations, with its
/// slips marked and its agreement through time below. Refers to `result`, which must outlive it.
[[nodiscard]] Sheet series_sheet(const dating::CrossdateResult& result);

/// Where each series of a site agrees with the others through time and where not: one row of bars each, with slips
/// marked. `breadth`: of the years, in points; nothing: by their number. Refers to `result`, which must outlive it.
[[nodiscard]] Sheet agreement_sheet(const dating::CrossdateResult& result, std::optional<double> breadth = {});

} // namespace pithward::picture
