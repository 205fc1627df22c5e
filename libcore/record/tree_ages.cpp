#include "libcore/record/tree_ages.h"

#include "libcore/field/tree_ages.h"
#include "libcore/measure/measure.h"

#include <algorithm>
#include <set>

namespace pithward::record {

namespace {

/// A core of a tree with its accepted reading, where that tells the year of the pith.
struct AgedCore {
    Document document;
    bool unconfirmed = false;
    field::DatedPith dated;
};

Outcome<std::vector<AgedCore>> aged_cores(const Project& project, std::span<const CoreEntry> of_tree) {
    const auto readings = project.readings();
    if (!readings) {
        return tl::unexpected(readings.error());
    }
    std::vector<AgedCore> known;
    for (const CoreEntry& core : of_tree) {
        const auto entry =
            core.accepted ? std::ranges::find(*readings, *core.accepted, &ReadingEntry::id) : readings->end();
        if (entry == readings->end()) {
            continue;
        }
        auto document = project.document(entry->id);
        if (!document) {
            return tl::unexpected(std::move(document.error()));
        }
        const auto series = measure(document->reading());
        if (const auto year = series ? pith_year(document->reading(), *series) : std::nullopt) {
            AgedCore one{std::move(*document), entry->unconfirmed(), {core.core, *year}};
            known.push_back(std::move(one));
        }
    }
    return known;
}

/// The edit of `noted` by which its finding about `other` becomes what the years tell now. Nothing where it is that.
std::optional<Edit> renewed(const AgedCore& noted, const AgedCore& other) {
    const Finding* before = field::tree_ages_finding(noted.document.reading(), other.dated.core);
    const auto remark = field::tree_ages_remark(noted.dated, other.dated);
    EditGroup group{"Hold the tree's cores against each other", {}};
    if (before != nullptr && (!remark || before->reason != remark->reason)) {
        group.edits.push_back(Edit{Removed<Finding>{*before}});
    }
    if (remark && (before == nullptr || before->reason != remark->reason)) {
        Finding finding = field::finding_of(noted.document.reading(), *remark);
        finding.id = FindingId{noted.document.fresh_id()};
        group.edits.push_back(Edit{Added<Finding>{std::move(finding)}});
    }
    return group.edits.empty() ? std::nullopt : std::optional(Edit{std::move(group)});
}

/// At most one finding for a pair: where it is by now, else on the one of the two that was read last and that no person
/// has confirmed anything of. Whether one came in.
Outcome<bool> compare_pair(Project& project, AgedCore& earlier, AgedCore& later, AgeFindings findings,
                           const EditStamp& stamp) {
    const auto about = [](const AgedCore& noted, const AgedCore& other) {
        return field::tree_ages_finding(noted.document.reading(), other.dated.core);
    };
    const Finding* in_later = about(later, earlier);
    const Finding* in_earlier = about(earlier, later);
    for (const Finding* there : {in_later, in_earlier}) {
        if (there != nullptr && (there->state != Finding::State::Open || there->verdict != Verdict::None)) {
            return false; // a person's word
        }
    }
    const bool there = in_later != nullptr || in_earlier != nullptr;
    const bool may_come = findings == AgeFindings::FollowAdd && (later.unconfirmed || earlier.unconfirmed);
    if (!there && !may_come) {
        return false;
    }
    const bool on_later = there ? in_later != nullptr : later.unconfirmed;
    AgedCore& noted = on_later ? later : earlier;
    const auto edit = renewed(noted, on_later ? earlier : later);
    if (!edit) {
        return false;
    }
    const ReadingId id = noted.document.reading().id;
    const auto made = project.edit(id, *edit, stamp);
    auto now = made ? project.document(id) : tl::unexpected(made.error());
    if (!now) {
        return tl::unexpected(std::move(now.error()));
    }
    noted.document = std::move(*now);
    return !there && made->has_value();
}

} // namespace

Outcome<int> compare_tree_ages(Project& project, std::span<const CoreEntry> of_tree, AgeFindings findings,
                               const EditStamp& stamp) {
    auto known = of_tree.size() < 2 ? Outcome<std::vector<AgedCore>>() : aged_cores(project, of_tree);
    if (!known) {
        return tl::unexpected(std::move(known.error()));
    }
    int count = 0;
    for (std::size_t i = 0; i < known->size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            const auto noted = compare_pair(project, (*known)[k], (*known)[i], findings, stamp);
            if (!noted) {
                return tl::unexpected(noted.error());
            }
            count += *noted ? 1 : 0;
        }
    }
    return count;
}

Outcome<void> follow_tree_ages(Project& project, std::span<const ReadingId> changed,
                               const std::string& program_version) {
    const auto cores = project.cores();
    const auto readings = project.readings();
    if (!cores || !readings) {
        return tl::unexpected(cores ? readings.error() : cores.error());
    }
    const auto same_tree = [](const CoreEntry& one, const CoreEntry& other) {
        return one.site.id == other.site.id && one.tree.id == other.tree.id;
    };
    std::set<CoreId> done;
    for (const ReadingId id : changed) {
        const auto reading = std::ranges::find(*readings, id, &ReadingEntry::id);
        const auto core =
            reading == readings->end() ? cores->end() : std::ranges::find(*cores, reading->core, &CoreEntry::id);
        if (core == cores->end() || done.contains(core->id)) {
            continue;
        }
        std::vector<CoreEntry> of_tree;
        for (const CoreEntry& one : *cores) {
            if (same_tree(one, *core)) {
                of_tree.push_back(one);
                done.insert(one.id);
            }
        }
        const EditStamp stamp{"Pithward", utc_now(), program_version};
        if (auto compared = compare_tree_ages(project, of_tree, AgeFindings::Follow, stamp); !compared) {
            return tl::unexpected(std::move(compared.error()));
        }
    }
    return {};
}

} // namespace pithward::record
