#pragma once

#include "app/report/paper/document.h"

namespace pithward::report {

/// A page of advice to take along to the trees: which side to core, how deep, what to note, and the cautions. It says
/// what the checks of libcore/field hold a core against later, so that the core passes them.
[[nodiscard]] Document field_page();

} // namespace pithward::report
