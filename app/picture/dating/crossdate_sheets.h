#pragma once

#include "app/picture/dating/sheet.h"
#include "libcore/dating/crossdate.h"

namespace pithward::picture {

/// Each series (thin, dark) on the mean that it was held against (broad, pale), both in their own deviations, with its
/// slips marked and its agreement through time below. Refers to `result`, which must outlive it.
[[nodiscard]] Sheet series_sheet(const dating::CrossdateResult& result);

/// Where each series of a site agrees with the others through time and where not: one row of bars each, with slips
/// marked. Refers to `result`, which must outlive it.
[[nodiscard]] Sheet agreement_sheet(const dating::CrossdateResult& result);

} // namespace pithward::picture
