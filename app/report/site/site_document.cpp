#include "app/report/site/site_document.h"

#include "app/report/offscreen_gui.h"
#include "app/report/site/chapters.h"

#include <set>

namespace pithward::report {

namespace {

std::string sites_of(const SiteRecord& record) {
    std::string names;
    std::set<std::string> seen;
    for (const CoreRecord& core : record.cores) {
        if (seen.insert(core.entry.site.id).second) {
            names += (names.empty() ? "" : ", ") + core.entry.site.id;
        }
    }
    return (seen.size() == 1 ? "site " : "sites ") + names;
}

} // namespace

Document site_document(const SiteRecord& record) {
    const OffscreenGui gui; // Charts have letters.
    Document document;
    document.title = "Tree-ring widths of " + sites_of(record);
    document.subtitle = "What was sampled, how it was measured, dated and reviewed, and what was found";
    std::string made = "Project " + record.project + ". Made by Pithward " + record.version;
    if (constexpr std::size_t to_minutes = 16; record.made_at.size() >= to_minutes) {
        made += " on " + record.made_at.substr(0, 10) + " at " + record.made_at.substr(11, 5) + " UTC";
    }
    document.facts = {made + "."};
    add_summary(document.blocks, record);
    add_samples(document.blocks, record);
    add_methods(document.blocks, record);
    add_dating(document.blocks, record);
    add_ages(document.blocks, record);
    add_growth(document.blocks, record);
    add_climate(document.blocks, record);
    add_cores(document.blocks, record);
    add_limits(document.blocks);
    add_sources(document.blocks);
    return finished(std::move(document));
}

} // namespace pithward::report
