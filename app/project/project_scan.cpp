#include "app/project/project_scan.h"

#include "libcore/record/scan_search.h"

namespace pithward::bench {

Outcome<ProjectScan> open_project_scan(const ProjectOverview& overview, const record::CoreEntry& core,
                                       const ScanOpener& opener) {
    if (core.core.scan.empty()) {
        return fail(core.core.id, "this core has no scan", "name it in the field sheet");
    }
    return record::find_scan(overview.folder, core.core.scan, overview.scans)
        .and_then([&](const record::FoundScan& found) {
            return opener(found.file.string()).map([&](OpenedScan scan) {
                scan.named = core.core.scan;
                scan.field = FieldData{overview.file.filename().string(), core.site, core.tree, core.core};
                return ProjectScan{std::move(scan), found.moved};
            });
        });
}

} // namespace pithward::bench
