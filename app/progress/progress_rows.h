#pragma once

#include "app/project/project_desk.h"
#include "app/site/site_cores.h"
#include "libcore/progress/core_progress.h"

#include <memory>
#include <set>
#include <string>
#include <vector>

namespace pithward::bench {

struct SiteDating;

/// A core of the project with how far it is.
struct ProgressRow {
    record::CoreEntry core;
    progress::CoreProgress progress;
    std::optional<record::ReadingEntry> reading; ///< The accepted one.
    std::shared_ptr<const SiteCore> read;        ///< Its reading as the site has it; null where it was not seen yet.
    int rings = 0;
    std::optional<int> first_year;
    std::optional<int> last_year;
};

/// A row for each core, in the order of the field sheet. `dating` may be null; what it says of a reading counts while
/// the reading is the one that was dated.
[[nodiscard]] std::vector<ProgressRow> progress_rows(const ProjectOverview& overview, const SiteCores& seen,
                                                     const SiteDating* dating,
                                                     const std::set<std::string>& scans_there);

} // namespace pithward::bench
