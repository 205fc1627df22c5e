#include "libcore/edit/edits_between.h"

#include "libcore/edit/object_lists.h"
#include "libcore/edit/reading_head.h"

#include <map>

namespace pithward {

namespace {

/// Whether an object stays where it is, so that changing it can't put it past another one.
bool same_place(const Boundary& a, const Boundary& b) {
    return a.leg == b.leg && a.at == b.at;
}
bool same_place(const Candidate& a, const Candidate& b) {
    return a.leg == b.leg && a.at == b.at;
}
bool same_place(const Break& a, const Break& b) {
    return a.leg == b.leg && a.from == b.from;
}
bool same_place(const AbsentRing& /*a*/, const AbsentRing& /*b*/) {
    return true;
}
bool same_place(const Finding& /*a*/, const Finding& /*b*/) {
    return true;
}

/// Removals come before the path changes and additions after it, so that no part of the group is refused half way.
struct Parts {
    std::vector<Edit> removals;
    std::vector<Edit> changes;
    std::vector<Edit> additions;
};

template <typename T>
void compare(Parts& parts, const std::vector<T>& before, const std::vector<T>& after, bool same_path) {
    std::map<std::int64_t, const T*> kept;
    for (const T& object : after) {
        kept.emplace(object.id.value, &object);
    }
    for (const T& object : before) {
        const auto found = kept.find(object.id.value);
        if (found == kept.end()) {
            parts.removals.push_back({Removed<T>{object}});
            continue;
        }
        const T& now = *found->second;
        if (!same_place(object, now) || (OnPath<T> && !same_path)) {
            parts.removals.push_back({Removed<T>{object}});
            continue; // and added again below
        }
        if (!(object == now)) {
            parts.changes.push_back({Changed<T>{object, now}});
        }
        kept.erase(found);
    }
    for (const T& object : after) {
        if (kept.contains(object.id.value)) {
            parts.additions.push_back({Added<T>{object}});
        }
    }
}

void compare_calibrations(Parts& parts, const Reading& before, const Reading& after) {
    const auto scale_of = [](const Reading& reading, const std::string& scan) {
        const auto found = reading.calibrations.find(scan);
        return found == reading.calibrations.end() ? std::nullopt : std::optional(found->second);
    };
    for (const auto& [scan, scale] : before.calibrations) {
        if (const auto now = scale_of(after, scan); now != scale) {
            parts.changes.push_back({CalibrationChanged{scan, scale, now}});
        }
    }
    for (const auto& [scan, scale] : after.calibrations) {
        if (!before.calibrations.contains(scan)) {
            parts.changes.push_back({CalibrationChanged{scan, std::nullopt, scale}});
        }
    }
}

} // namespace

Edit edits_between(const Reading& before, const Reading& after, std::string label) {
    Parts parts;
    const bool same_path = before.path == after.path;
    if (!same_path) {
        parts.changes.push_back({Changed<Path>{before.path, after.path}});
    }
    if (!(head_of(before) == head_of(after))) {
        parts.changes.push_back({Changed<ReadingHead>{head_of(before), head_of(after)}});
    }
    compare_calibrations(parts, before, after);
    compare(parts, before.absent_rings, after.absent_rings, same_path);
    compare(parts, before.boundaries, after.boundaries, same_path);
    compare(parts, before.not_annual, after.not_annual, same_path);
    compare(parts, before.breaks, after.breaks, same_path);
    compare(parts, before.findings, after.findings, same_path);
    EditGroup group{std::move(label), std::move(parts.removals)};
    group.edits.insert(group.edits.end(), parts.changes.begin(), parts.changes.end());
    group.edits.insert(group.edits.end(), parts.additions.begin(), parts.additions.end());
    return {std::move(group)};
}

} // namespace pithward
