#pragma once

#include "app/bench/model/opened_scan.h"
#include "app/project/overview.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace pithward::bench {

/// A scan of a project, found and opened.
struct ProjectScan {
    OpenedScan scan; ///< Goes by the name that the project has for it.
    bool moved = false;
};

/// Where a scan of a project leads to, outside of its folder.
struct PlaceOutside {
    std::string scan; ///< As the project names it.
    std::filesystem::path place;
};

/// Finds the scan of a core, by its checksum where it was moved, and opens it; for a thread beside the window. Nothing
/// outside the project's folder is opened but what is `allowed`.
[[nodiscard]] Outcome<ProjectScan> open_project_scan(const ProjectOverview& overview, const record::CoreEntry& core,
                                                     const ScanOpener& opener,
                                                     const std::vector<std::filesystem::path>& allowed);

/// Where the scan of a core leads to, if that is outside and not allowed.
[[nodiscard]] std::optional<PlaceOutside> not_allowed(const ProjectOverview& overview, const record::CoreEntry& core,
                                                      const std::vector<std::filesystem::path>& allowed);

} // namespace pithward::bench
