#pragma once

#include "libcore/dating/crossdate.h"

namespace pithward::batch {

/// Prints what crossdating found: a line a series with what the others say and what is to be known of it, the ranked
/// positions of series without years, a line about the site, and a line a pair where pairs were asked for.
void print_crossdate(const dating::CrossdateResult& result);

} // namespace pithward::batch
