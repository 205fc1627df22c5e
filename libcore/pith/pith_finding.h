#pragma once

#include "libcore/specimen/reading.h"

#include <string>

namespace pithward::pith {

/// A finding about the way to the pith, at the innermost boundary, or at the path's end where there is none.
[[nodiscard]] Finding pith_finding(const Reading& reading, std::string reason, std::string proposal,
                                   double probability);

/// "3.1 mm"
[[nodiscard]] std::string mm_text(double mm);
/// "3.1 mm to 4.2 mm"
[[nodiscard]] std::string range_text(double low_mm, double high_mm);

} // namespace pithward::pith
