#include "app/batch/tree_ages.h"

#include "app/batch/each_accepted.h"
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
    bool unconfirmed = false;
    field::DatedPith dated;
};

/// Those of a tree's cores that tell it.
Outcome<std::vector<AgedCore>> aged(const record::Project& project, std::span<const CoreEntry> cores,
                                    const std::set<ReadingId>& unconfirmed) {
    std::vector<AgedCore> known;
    const auto see = [&](const CoreEntry& core, const Reading& reading, const RingSeries& series) {
        if (const auto year = pith_year(reading, series)) {
            known.push_back({*core.accepted, unconfirmed.contains(*core.accepted), {core.core, *year}});
        }
    };
    return each_accepted(project, cores, see).map([&] { return std::move(known); });
}

/// At most one finding for a pair: on the reading where it is by now, else on the one of the two that was read last and
/// that no person has confirmed anything of. An open one goes where the ages agree by now; what was answered stays.
Outcome<bool> compare_pair(record::Project& project, const AgedCore& noted, const AgedCore& other,
                           const EditStamp& stamp) {
    const auto document = project.document(noted.reading);
    const auto beside = project.document(other.reading);
    if (!document || !beside) {
        return tl::unexpected(document ? beside.error() : document.error());
    }
    const Finding* before = field::tree_ages_finding(document->reading(), other.dated.core);
    const bool answered = before != nullptr && before->state != Finding::State::Open;
    if (answered || field::tree_ages_finding(beside->reading(), noted.dated.core) != nullptr) {
        return false;
    }
    const auto remark = field::tree_ages_remark(noted.dated, other.dated);
    EditGroup group{"Hold the tree's cores against each other", {}};
    if (before != nullptr && (!remark || before->reason != remark->reason)) {
        group.edits.push_back(Edit{Removed<Finding>{*before}});
    }
    if (remark && (before == nullptr || before->reason != remark->reason)) {
        Finding finding = field::finding_of(document->reading(), *remark);
        finding.id = FindingId{document->fresh_id()};
        group.edits.push_back(Edit{Added<Finding>{std::move(finding)}});
    }
    if (group.edits.empty()) {
        return false;
    }
    return project.edit(noted.reading, Edit{std::move(group)}, stamp).map([&](const auto& record) {
        return record.has_value() && remark && before == nullptr;
    });
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
    std::set<ReadingId> unconfirmed;
    for (const record::ReadingEntry& one : *readings) {
        if (one.unconfirmed()) {
            unconfirmed.insert(one.id);
        }
    }
    int findings = 0;
    for (const auto& [tree, of_tree] : trees) {
        if (of_tree.size() < 2) {
            continue;
        }
        const auto known = aged(project, of_tree, unconfirmed);
        if (!known) {
            return tl::unexpected(known.error());
        }
        for (std::size_t i = 0; i < known->size(); ++i) {
            for (std::size_t k = 0; k < i; ++k) {
                const AgedCore& later = (*known)[i];
                const AgedCore& earlier = (*known)[k];
                if (!later.unconfirmed && !earlier.unconfirmed) {
                    continue;
                }
                const auto noted = compare_pair(project, later.unconfirmed ? later : earlier,
                                                later.unconfirmed ? earlier : later, stamp);
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
