#pragma once

#include "libcore/edit/document.h"
#include "libcore/pith/judge_pith.h"
#include "libcore/record/project.h"

namespace pithward::batch {

/// Judges the piths of the readings that no person has confirmed anything of again, with what the accepted readings of
/// the site's other cores tell of growth near the pith (pith/site_growth.h), where three of them or more tell. All such
/// readings and not only new ones, so that neither the order in which cores are read nor an interruption has a say. A
/// pith that was placed by hand stays. Each change is an edit.
[[nodiscard]] Outcome<void> judge_piths_by_site(record::Project& project, const EditStamp& stamp);

/// What the field sheet knows of a core's pith.
[[nodiscard]] PithKnowledge knowledge_of(const Tree& tree);

} // namespace pithward::batch
