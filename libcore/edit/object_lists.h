#pragma once

#include "libcore/edit/path_order.h"
#include "libcore/specimen/reading.h"

#include <algorithm>
#include <concepts>
#include <vector>

namespace pithward {

/// The kinds of object that a reading lists, for code that does the same to each: where the list is, what a person
/// calls one of it. A new kind is one line here and three in Edit::Body.
template <typename T>
struct ObjectList;
template <>
struct ObjectList<Boundary> {
    static constexpr auto in = &Reading::boundaries;
    static constexpr const char* noun = "ring boundary";
};
template <>
struct ObjectList<Candidate> {
    static constexpr auto in = &Reading::not_annual;
    static constexpr const char* noun = "candidate";
};
template <>
struct ObjectList<Break> {
    static constexpr auto in = &Reading::breaks;
    static constexpr const char* noun = "break";
};
template <>
struct ObjectList<AbsentRing> {
    static constexpr auto in = &Reading::absent_rings;
    static constexpr const char* noun = "locally absent ring";
};
template <>
struct ObjectList<Finding> {
    static constexpr auto in = &Reading::findings;
    static constexpr const char* noun = "finding";
};

/// What stands in path order; the rest stands in the order of its ids.
template <typename T>
concept OnPath = requires(const Path& path, const T& value) {
    { path_order(path, value) } -> std::same_as<PathOrder>;
};

/// Whether `a` stands before `b` in its list.
template <typename T>
[[nodiscard]] bool stands_before(const Path& path, const T& a, const T& b) {
    if constexpr (OnPath<T>) {
        return path_order(path, a) < path_order(path, b);
    } else {
        return a.id < b.id;
    }
}

/// The object of this id; the list's end where there is none.
template <typename List>
[[nodiscard]] auto find_object(List& list, decltype(list.begin()->id) id) {
    return std::find_if(list.begin(), list.end(), [&](const auto& object) { return object.id == id; });
}

/// Calls `visit` with each list of a reading.
template <typename R, typename Visit>
void for_each_list(R& reading, Visit visit) {
    visit(reading.boundaries);
    visit(reading.not_annual);
    visit(reading.breaks);
    visit(reading.absent_rings);
    visit(reading.findings);
}

} // namespace pithward
