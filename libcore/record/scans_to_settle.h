#pragma once

#include "libcore/record/project.h"

#include <string>
#include <vector>

namespace pithward::record {

/// What of a project's scans only a person can tell.
struct ScansToSettle {
    /// A scan and the cores that it is about.
    struct Doubt {
        std::string scan; ///< As the project names it.
        std::vector<CoreEntry> cores;
    };
    std::vector<CoreEntry> without_scan; ///< Cores that name none, or one that is not there.
    std::vector<Doubt> without_core;     ///< Scans that no core and no reading has; `cores`: without one, called alike.
    std::vector<Doubt> unclear;          ///< Scans of several cores, of which nothing tells which is which.

    [[nodiscard]] bool empty() const { return without_scan.empty() && without_core.empty() && unclear.empty(); }
};

[[nodiscard]] Outcome<ScansToSettle> scans_to_settle(const Project& project);

/// The JSON of a project (project_json) with "scans_to_settle" added: {"cores_without_scan": [{"site", "core",
/// "scan"}], "scans_without_core": [{"scan", "may_be": [{"site", "core"}]}], "unclear": [{"scan", "cores": [{"site",
/// "core"}]}]}.
[[nodiscard]] std::string with_scans_to_settle(const std::string& project_json, const ScansToSettle& scans);

} // namespace pithward::record
