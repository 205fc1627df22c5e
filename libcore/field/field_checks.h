#pragma once

#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"
#include "libcore/specimen/site.h"

namespace pithward {

/// The reading with what the field sheet tells about its core as findings (libcore/field, one check a file): adds and
/// numbers the new ones; one that is there already, open or settled, is not raised again. `site` and `tree` need not
/// hold their trees and cores. Call it after the pith was judged.
[[nodiscard]] Reading with_field_checks(Reading reading, const RingSeries& series, const Site& site, const Tree& tree,
                                        const Core& core);

/// What the field sheet says of a core; `site` and `tree` need not hold their trees and cores.
struct FieldFacts {
    Site site;
    Tree tree;
    Core core;
};

/// The reading after the field data of its core was changed: open findings that only the former data gave go, new ones
/// come. What was settled stays.
[[nodiscard]] Reading with_changed_field_facts(Reading reading, const RingSeries& series, const FieldFacts& before,
                                               const FieldFacts& after);

/// What the findings of the kind FieldSheet are kept apart by: the same reason is the same finding.
[[nodiscard]] bool has_finding(const Reading& reading, const Finding& finding);

} // namespace pithward
