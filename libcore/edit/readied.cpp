#include "libcore/edit/apply.h"
#include "libcore/edit/finite.h"
#include "libcore/edit/object_lists.h"
#include "libcore/edit/reading_head.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace pithward {

namespace {

/// The program numbers what it finds from 1; what is not numbered, or numbered twice, gets the next number.
template <typename T>
void give_ids(std::vector<T>& list) {
    std::set<std::int64_t> taken;
    std::int64_t highest = 0;
    for (const T& object : list) {
        highest = std::max(highest, object.id.value);
    }
    for (T& object : list) {
        if (object.id.value <= 0 || !taken.insert(object.id.value).second) {
            object.id.value = ++highest;
            taken.insert(highest);
        }
    }
}

std::optional<Fault> hanging(const char* what) {
    return Fault{"", what, "change or remove it first"};
}

bool all_finite(const Reading& reading) {
    bool finite = is_finite(reading.path) && is_finite(head_of(reading));
    for (const auto& [scan, scale] : reading.calibrations) {
        finite = finite && is_finite(scale);
    }
    for_each_list(reading, [&](const auto& list) {
        finite = finite && std::ranges::all_of(list, [](const auto& object) { return is_finite(object); });
    });
    return finite;
}

bool joins_hold(const Reading& reading) {
    const std::vector<Leg>& legs = reading.path.legs;
    for (std::size_t i = 0; i < legs.size(); ++i) {
        const bool follows = !std::holds_alternative<std::monostate>(legs[i].joined_by);
        if (i == 0 ? follows : !follows) {
            return false;
        }
        if (const auto* join = std::get_if<JoinedAtBoundary>(&legs[i].joined_by)) {
            const auto before = find_object(reading.boundaries, join->on_previous);
            const auto here = find_object(reading.boundaries, join->on_this);
            if (before == reading.boundaries.end() || here == reading.boundaries.end() || before->leg != i - 1 ||
                here->leg != i) {
                return false;
            }
        }
        if (const auto* join = std::get_if<JoinedAtBreak>(&legs[i].joined_by)) {
            if (find_object(reading.breaks, join->at) == reading.breaks.end()) {
                return false;
            }
        }
    }
    return true;
}

} // namespace

std::optional<Fault> fault_of_links(const Reading& reading) {
    const auto off_path = [&](const auto& object) { return object.leg >= reading.path.legs.size(); };
    if (std::ranges::any_of(reading.boundaries, off_path)) {
        return hanging("a ring boundary would lie on a leg that the path does not have");
    }
    if (std::ranges::any_of(reading.not_annual, off_path) || std::ranges::any_of(reading.breaks, off_path)) {
        return hanging("a candidate or a break would lie on a leg that the path does not have");
    }
    if (std::ranges::any_of(reading.findings, off_path)) {
        return hanging("a finding would lie on a leg that the path does not have");
    }
    std::set<BoundaryId> boundaries;
    if (!reading.absent_rings.empty()) { // most readings have none, and the set takes a while to make
        std::ranges::transform(reading.boundaries, std::inserter(boundaries, boundaries.end()), &Boundary::id);
    }
    if (!std::ranges::all_of(reading.absent_rings, [&](const auto& ring) { return boundaries.contains(ring.at); })) {
        return hanging("a locally absent ring would stand at a boundary that is not there");
    }
    if (!joins_hold(reading)) {
        return hanging("two legs of the path would not be joined at a boundary or break of both");
    }
    return std::nullopt;
}

Outcome<Reading> readied(Reading reading) {
    if (!all_finite(reading)) {
        return fail("", "a place or a measure of this reading is no finite number", "read the core anew");
    }
    for_each_list(reading, [&](auto& list) {
        give_ids(list);
        const auto before = [&](const auto& a, const auto& b) { return stands_before(reading.path, a, b); };
        if (!std::ranges::is_sorted(list, before)) { // as a project keeps them, they mostly are
            std::ranges::stable_sort(list, before);
        }
    });
    if (auto fault = fault_of_links(reading)) {
        return tl::unexpected(std::move(*fault));
    }
    return reading;
}

} // namespace pithward
