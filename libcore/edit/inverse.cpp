#include "libcore/edit/apply.h"

#include <algorithm>
#include <iterator>

namespace pithward {

namespace {

template <typename T>
Edit turned(const Added<T>& added) {
    return {Removed<T>{added.value}};
}

template <typename T>
Edit turned(const Removed<T>& removed) {
    return {Added<T>{removed.value}};
}

template <typename T>
Edit turned(const Changed<T>& changed) {
    return {Changed<T>{changed.after, changed.before}};
}

Edit turned(const CalibrationChanged& changed) {
    return {CalibrationChanged{changed.scan, changed.after, changed.before}};
}

Edit turned(const EditGroup& group) {
    EditGroup back{group.label, {}};
    back.edits.reserve(group.edits.size());
    std::transform(group.edits.rbegin(), group.edits.rend(), std::back_inserter(back.edits), inverse);
    return {std::move(back)};
}

template <typename T>
bool idle(const Added<T>& /*added*/) {
    return false;
}

template <typename T>
bool idle(const Removed<T>& /*removed*/) {
    return false;
}

template <typename T>
bool idle(const Changed<T>& changed) {
    return changed.before == changed.after;
}

bool idle(const CalibrationChanged& changed) {
    return changed.before == changed.after;
}

bool idle(const EditGroup& group) {
    return std::ranges::all_of(group.edits, changes_nothing);
}

} // namespace

Edit inverse(const Edit& edit) {
    return std::visit([](const auto& body) { return turned(body); }, edit.body);
}

bool changes_nothing(const Edit& edit) {
    return std::visit([](const auto& body) { return idle(body); }, edit.body);
}

} // namespace pithward
