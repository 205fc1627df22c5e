#pragma once

#include "libcore/edit/object_lists.h"
#include "libcore/specimen/outcome.h"

#include <functional>
#include <string>

namespace pithward {

/// The object of this id, or the reason why nothing can be done with it.
template <typename T, typename Id>
[[nodiscard]] Outcome<std::reference_wrapper<const T>> require_object(const std::vector<T>& list, Id id) {
    const auto found = find_object(list, id);
    if (found == list.end()) {
        return fail("", "this " + std::string(ObjectList<T>::noun) + " is not there any more", "choose another one");
    }
    return std::cref(*found);
}

} // namespace pithward
