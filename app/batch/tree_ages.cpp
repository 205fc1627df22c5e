#include "app/batch/tree_ages.h"

#include "app/batch/each_accepted.h"
#include "libcore/field/field_checks.h"
#include "libcore/field/tree_ages.h"

#include <algorithm>
#include <map>
#include <utility>

namespace pithward::batch {

namespace {

using record::CoreEntry;
using record::CoreId;

/// A core of a tree with its accepted reading, where that tells the year of the pith.
struct AgedCore {
    CoreId id;
    ReadingId reading;
    field::DatedPith dated;
};

/// Those of a tree's cores that tell it.
Outcome<std::vector<AgedCore>> aged(const record::Project& project, std::span<const CoreEntry> cores) {
    std::vector<AgedCore> known;
    const auto see = [&](const CoreEntry& core, const Reading& reading, const RingSeries& series) {
        if (const auto year = pith_year(reading, series)) {
            known.push_back({core.id, *core.accepted, {core.core, *year}});
        }
    };
    return each_accepted(project, cores, see).map([&] { return std::move(known); });
}

/// One finding for each pair, on the one of the two that was read last.
Outcome<bool> compare_pair(record::Project& project, const AgedCore& noted, const AgedCore& other,
                           const EditStamp& stamp) {
    const auto remark = field::tree_ages_remark(noted.dated, other.dated);
    if (!remark) {
        return false;
    }
    const auto document = project.document(noted.reading);
    if (!document) {
        return tl::unexpected(document.error());
    }
    Finding finding = field::finding_of(document->reading(), *remark);
    if (has_finding(document->reading(), finding)) {
        return false;
    }
    finding.id = FindingId{document->fresh_id()};
    const Edit edit{EditGroup{"Hold the tree's cores against each other", {{Added<Finding>{std::move(finding)}}}}};
    return project.edit(noted.reading, edit, stamp).map([](const auto& record) { return record.has_value(); });
}

} // namespace

Outcome<int> compare_tree_ages(record::Project& project, std::span<const CoreId> fresh, const EditStamp& stamp) {
    const auto cores = project.cores();
    if (!cores) {
        return tl::unexpected(cores.error());
    }
    std::map<std::pair<std::string, std::string>, std::vector<CoreEntry>> trees;
    for (const CoreEntry& core : *cores) {
        trees[{core.site.id, core.tree.id}].push_back(core);
    }
    const auto is_fresh = [&](CoreId id) { return std::ranges::find(fresh, id) != fresh.end(); };
    int findings = 0;
    for (const auto& [tree, of_tree] : trees) {
        if (of_tree.size() < 2 ||
            std::ranges::none_of(of_tree, [&](const CoreEntry& core) { return is_fresh(core.id); })) {
            continue;
        }
        const auto known = aged(project, of_tree);
        if (!known) {
            return tl::unexpected(known.error());
        }
        for (std::size_t i = 0; i < known->size(); ++i) {
            for (std::size_t k = 0; k < i; ++k) {
                const bool later_fresh = is_fresh((*known)[i].id);
                if (!later_fresh && !is_fresh((*known)[k].id)) {
                    continue;
                }
                const auto noted =
                    compare_pair(project, (*known)[later_fresh ? i : k], (*known)[later_fresh ? k : i], stamp);
                if (!noted) {
                    return tl::unexpected(noted.error());
                }
                findings += *noted ? 1 : 0;
            }
        }
    }
    return findings;
}

} // namespace pithward::batch
