#pragma once

#include "libcore/dating/slips/alignment.h"

namespace pithward::dating {

/// The alignment for one set of factors; `last_year` is that of the outermost ring, `jump` the years of a slip.
[[nodiscard]] Alignment sum_alignments(const StepFactors& factors, int last_year, int jump);

} // namespace pithward::dating
