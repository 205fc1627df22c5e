#pragma once

#include "libcore/edit/document.h"
#include "libcore/pith/judge_pith.h"
#include "libcore/record/project.h"

#include <span>

namespace pithward::batch {

/// A reading that was made just now.
struct FreshReading {
    record::CoreId core;
    ReadingId reading;
};

/// Judges the piths of fresh readings again, with what the accepted readings of the site's other cores tell of growth
/// near the pith (pith/site_growth.h). Where three of them or more tell, so that the order in which cores are read has
/// no say; each change is an edit.
[[nodiscard]] Outcome<void> judge_piths_by_site(record::Project& project, std::span<const FreshReading> fresh,
                                                const EditStamp& stamp);

/// What the field sheet knows of a core's pith.
[[nodiscard]] PithKnowledge knowledge_of(const Tree& tree);

} // namespace pithward::batch
