#pragma once

#include "app/bench/model/opened_scan.h"
#include "app/project/overview.h"

namespace pithward::bench {

/// A scan of a project, found and opened.
struct ProjectScan {
    OpenedScan scan; ///< Goes by the name that the project has for it.
    bool moved = false;
};

/// Finds the scan of a core, by its checksum where it was moved, and opens it; for a thread beside the window. Nothing
/// outside the project's folder is opened.
[[nodiscard]] Outcome<ProjectScan> open_project_scan(const ProjectOverview& overview, const record::CoreEntry& core,
                                                     const ScanOpener& opener);

} // namespace pithward::bench
