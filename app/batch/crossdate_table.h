#pragma once

#include "libcore/dating/crossdate.h"

namespace pithward::batch {

/// Prints what crossdating found: a line a series with what the others say and what is to be known of it, the ranked
/// positions of series without years, and a line about the site.
void print_crossdate(const dating::CrossdateResult& result);

} // namespace pithward::batch
