#include "app/batch/tree_ages.h"

#include "app/batch/each_accepted.h"
#include "libcore/field/field_checks.h"
#include "libcore/field/tree_ages.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace pithward::batch {

namespace {

using record::CoreEntry;

/// A core of a tree with its accepted reading, where that tells the year of the pith.
struct AgedCore {
    ReadingId reading;
    bool untouched = false; ///< By a person.
    field::DatedPith dated;
};

/// Those of a tree's cores that tell it.
Outcome<std::vector<AgedCore>> aged(const record::Project& project, std::span<const CoreEntry> cores,
                                    const std::set<ReadingId>& untouched) {
    std::vector<AgedCore> known;
    const auto see = [&](const CoreEntry& core, const Reading& reading, const RingSeries& series) {
        if (const auto year = pith_year(reading, series)) {
            known.push_back({*core.accepted, untouched.contains(*core.accepted), {core.core, *year}});
        }
    };
    return each_accepted(project, cores, see).map([&] { return std::move(known); });
}

/// One finding for each pair, on the one of the two that was read last and that no person has touched.
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

Outcome<int> compare_tree_ages(record::Project& project, const EditStamp& stamp) {
    const auto cores = project.cores();
    const auto readings = project.readings();
    if (!cores || !readings) {
        return tl::unexpected(cores ? readings.error() : cores.error());
    }
    std::map<std::pair<std::string, std::string>, std::vector<CoreEntry>> trees;
    for (const CoreEntry& core : *cores) {
        trees[{core.site.id, core.tree.id}].push_back(core);
    }
    std::set<ReadingId> untouched;
    for (const record::ReadingEntry& one : *readings) {
        if (one.untouched()) {
            untouched.insert(one.id);
        }
    }
    int findings = 0;
    for (const auto& [tree, of_tree] : trees) {
        if (of_tree.size() < 2) {
            continue;
        }
        const auto known = aged(project, of_tree, untouched);
        if (!known) {
            return tl::unexpected(known.error());
        }
        for (std::size_t i = 0; i < known->size(); ++i) {
            for (std::size_t k = 0; k < i; ++k) {
                const AgedCore& later = (*known)[i];
                const AgedCore& earlier = (*known)[k];
                if (!later.untouched && !earlier.untouched) {
                    continue;
                }
                const auto noted =
                    compare_pair(project, later.untouched ? later : earlier, later.untouched ? earlier : later, stamp);
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
