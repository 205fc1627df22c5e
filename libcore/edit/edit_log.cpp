#include "libcore/edit/edit_log.h"

#include "libcore/edit/apply.h"
#include "libcore/edit/object_lists.h"
#include "libcore/edit/touched.h"

#include <algorithm>
#include <map>
#include <set>
#include <vector>

namespace pithward {

namespace {

/// An edit as a person made it, with the records that took it back and brought it back, in turns.
struct Chain {
    std::vector<const EditRecord*> records;

    [[nodiscard]] const EditRecord& first() const { return *records.front(); }
    [[nodiscard]] const EditRecord& last() const { return *records.back(); }
    [[nodiscard]] bool in_effect() const { return records.size() % 2 == 1; }
    /// Whether it was in effect just before another record.
    [[nodiscard]] bool in_effect_before(EditId id) const {
        return std::ranges::count_if(records, [&](const EditRecord* one) { return one->id < id; }) % 2 == 1;
    }
};

std::vector<Chain> chains_of(std::span<const EditRecord> log) {
    std::vector<Chain> chains;
    std::map<EditId, std::size_t> chain_of;
    for (const EditRecord& record : log) {
        const auto named = record.undoes ? chain_of.find(*record.undoes) : chain_of.end();
        const std::size_t index = named == chain_of.end() ? chains.size() : named->second;
        if (index == chains.size()) {
            chains.emplace_back();
        }
        chains[index].records.push_back(&record);
        chain_of[record.id] = index;
    }
    return chains;
}

std::optional<Touched> in_common(const Edit& a, const Edit& b) {
    const std::set<Touched> of_a = touched(a);
    for (const Touched& object : touched(b)) {
        if (of_a.contains(object)) {
            return object;
        }
    }
    return std::nullopt;
}

template <typename T>
std::string verb_of(const Added<T>& /*added*/) {
    return std::string("Add a ") + ObjectList<T>::noun;
}
template <typename T>
std::string verb_of(const Removed<T>& /*removed*/) {
    return std::string("Remove a ") + ObjectList<T>::noun;
}
template <typename T>
std::string verb_of(const Changed<T>& /*changed*/) {
    return std::string("Change a ") + ObjectList<T>::noun;
}
std::string verb_of(const Changed<ReadingHead>& changed) {
    const ReadingHead& before = changed.before;
    const ReadingHead& after = changed.after;
    if (before.state != after.state) {
        return "Set the reading to " + word(after.state);
    }
    if (before.last_year != after.last_year) {
        return "Set the outermost year";
    }
    if (before.wood != after.wood) {
        return "Set the wood type";
    }
    if (before.outer != after.outer) {
        return "Set the wood under the bark";
    }
    if (before.pith != after.pith) {
        return after.pith && after.pith->source == Pith::Source::Hand ? "Place the pith by hand" : "Judge the pith";
    }
    return before.note != after.note ? "Note on the reading" : "Change the reading's entries";
}
std::string verb_of(const Changed<Path>& /*changed*/) {
    return "Change the path";
}
std::string verb_of(const CalibrationChanged& /*changed*/) {
    return "Change the scale";
}
std::string verb_of(const EditGroup& group) {
    return group.label;
}

} // namespace

std::vector<const EditRecord*> edits_in_effect(std::span<const EditRecord> log) {
    std::vector<const EditRecord*> edits;
    for (const Chain& chain : chains_of(log)) {
        if (chain.in_effect()) {
            edits.push_back(&chain.first());
        }
    }
    return edits;
}

std::optional<EditId> next_to_undo(std::span<const EditRecord> log, std::string_view who) {
    std::optional<EditId> latest;
    for (const Chain& chain : chains_of(log)) {
        if (chain.first().who == who && chain.in_effect()) {
            latest = chain.last().id;
        }
    }
    return latest;
}

std::optional<EditId> next_to_redo(std::span<const EditRecord> log, std::string_view who) {
    const std::vector<Chain> chains = chains_of(log);
    EditId latest_new{0};
    for (const Chain& chain : chains) {
        if (chain.first().who == who) {
            latest_new = chain.first().id;
        }
    }
    for (const Chain& chain : chains) {
        if (chain.last().who == who && !chain.in_effect() && chain.last().id > latest_new) {
            return chain.last().id;
        }
    }
    return std::nullopt;
}

Outcome<Edit> taking_back(std::span<const EditRecord> log, EditId record) {
    const std::vector<Chain> chains = chains_of(log);
    const auto chain = std::ranges::find_if(chains, [&](const Chain& one) { return one.last().id == record; });
    if (chain == chains.end()) {
        return fail("", "this edit is not in the history, or was taken back already", "look at the history");
    }
    for (const Chain& other : chains) {
        if (&other == &*chain || other.in_effect() == other.in_effect_before(record)) {
            continue; // what came and went since then leaves nothing behind
        }
        if (const auto object = in_common(chain->last().edit, other.last().edit)) {
            return fail("", "a later edit by " + other.last().who + " touches " + name_of(*object) + " too",
                        "take that one back first");
        }
    }
    return inverse(chain->last().edit);
}

std::string label_of(const Edit& edit) {
    return std::visit([](const auto& body) { return verb_of(body); }, edit.body);
}

std::string label_of(std::span<const EditRecord> log, const EditRecord& record) {
    const EditRecord* made = &record;
    bool undo = false;
    while (made->undoes) {
        const auto named = std::ranges::lower_bound(log, *made->undoes, {}, &EditRecord::id);
        if (named == log.end() || named->id != *made->undoes || named->id >= made->id) {
            break;
        }
        made = &*named;
        undo = !undo;
    }
    const std::string label = label_of(made->edit);
    return made == &record ? label : (undo ? "Undo: " : "Redo: ") + label;
}

} // namespace pithward
