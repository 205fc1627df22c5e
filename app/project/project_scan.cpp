#include "app/project/project_scan.h"

#include "libcore/record/scan_search.h"

namespace pithward::bench {

Outcome<ProjectScan> open_project_scan(const ProjectOverview& overview, const record::CoreEntry& core,
                                       const ScanOpener& opener, const std::vector<std::filesystem::path>& allowed) {
    if (core.core.scan.empty()) {
        return fail(core.core.id, "this core has no scan", "name it in the field sheet");
    }
    if (const auto outside = not_allowed(overview, core, allowed)) {
        return fail(core.core.scan,
                    "the scan is outside of the project's folder, at " + outside->place.string() +
                        ", and is not opened",
                    "open its core from the list, and answer the question");
    }
    return record::find_scan(overview.folder, core.core.scan, overview.scans, allowed, record::Held::Quickly)
        .and_then([&](const record::FoundScan& found) {
            return opener(found.file.string()).map([&](OpenedScan scan) {
                scan.named = core.core.scan;
                scan.field = FieldData{overview.file.filename().string(), core.site, core.tree, core.core};
                return ProjectScan{std::move(scan), found.moved};
            });
        });
}

std::optional<PlaceOutside> not_allowed(const ProjectOverview& overview, const record::CoreEntry& core,
                                        const std::vector<std::filesystem::path>& allowed) {
    auto place = record::place_outside(overview.folder, core.core.scan);
    return place && !record::is_named(*place, allowed) ? std::optional(PlaceOutside{core.core.scan, std::move(*place)})
                                                       : std::nullopt;
}

} // namespace pithward::bench
