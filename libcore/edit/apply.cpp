#include "libcore/edit/apply.h"

#include "libcore/edit/finite.h"
#include "libcore/edit/object_lists.h"
#include "libcore/edit/reading_head.h"

#include <string>

namespace pithward {

namespace {

using Refusal = std::optional<Fault>;

Refusal refuse(std::string what, const char* remedy) {
    return Fault{"", std::move(what), remedy};
}

Refusal no_number(const char* noun) {
    return refuse("a measure of the " + std::string(noun) + " is no finite number", "please report this");
}

Refusal changed_since(const char* noun) {
    return refuse("the " + std::string(noun) + " is no longer what it was when this edit was begun",
                  "look at it again and repeat the edit");
}

/// Does the parts of an edit, one after the other, to a reading of its own.
class Applying {
public:
    explicit Applying(Reading& reading)
        : reading_(reading) {}

    /// The order of a list, along the path as it is at the moment.
    template <typename T>
    [[nodiscard]] auto before() const {
        return [this](const T& a, const T& b) { return stands_before(reading_.path, a, b); };
    }

    Refusal operator()(const EditGroup& group) {
        for (const Edit& edit : group.edits) {
            if (auto refusal = std::visit(*this, edit.body)) {
                return refusal;
            }
        }
        return std::nullopt;
    }

    Refusal operator()(const Changed<ReadingHead>& changed) {
        if (!(head_of(reading_) == changed.before)) {
            return changed_since("reading");
        }
        if (!is_finite(changed.after)) {
            return no_number("reading");
        }
        set_head(reading_, changed.after);
        return std::nullopt;
    }

    Refusal operator()(const Changed<Path>& changed) {
        if (!(reading_.path == changed.before)) {
            return changed_since("path");
        }
        if (!is_finite(changed.after)) {
            return no_number("path");
        }
        reading_.path = changed.after;
        if (!std::ranges::is_sorted(reading_.boundaries, before<Boundary>())) {
            return refuse("ring boundaries would change their order along this path",
                          "remove the boundaries first, or draw the path so that it meets them in their order");
        }
        std::ranges::sort(reading_.not_annual, before<Candidate>());
        std::ranges::sort(reading_.breaks, before<Break>());
        return std::nullopt;
    }

    Refusal operator()(const CalibrationChanged& changed) {
        const auto found = reading_.calibrations.find(changed.scan);
        const bool known = found != reading_.calibrations.end();
        if (known != changed.before.has_value() || (known && !(found->second == *changed.before))) {
            return changed_since("scale");
        }
        if (!changed.after) {
            reading_.calibrations.erase(changed.scan);
            return std::nullopt;
        }
        if (!is_finite(*changed.after)) {
            return no_number("scale");
        }
        reading_.calibrations.insert_or_assign(changed.scan, *changed.after);
        return std::nullopt;
    }

    template <typename T>
    Refusal operator()(const Added<T>& added) {
        auto& list = reading_.*ObjectList<T>::in;
        if (added.value.id.value <= 0 || find_object(list, added.value.id) != list.end()) {
            return refuse("a " + std::string(ObjectList<T>::noun) + " of this number is there already",
                          "repeat the edit");
        }
        if (!is_finite(added.value)) {
            return no_number(ObjectList<T>::noun);
        }
        list.insert(std::ranges::upper_bound(list, added.value, before<T>()), added.value);
        return std::nullopt;
    }

    template <typename T>
    Refusal operator()(const Removed<T>& removed) {
        auto& list = reading_.*ObjectList<T>::in;
        const auto found = find_object(list, removed.value.id);
        if (found == list.end() || !(*found == removed.value)) {
            return changed_since(ObjectList<T>::noun);
        }
        list.erase(found);
        return std::nullopt;
    }

    template <typename T>
    Refusal operator()(const Changed<T>& changed) {
        auto& list = reading_.*ObjectList<T>::in;
        const auto found = find_object(list, changed.before.id);
        if (found == list.end() || !(*found == changed.before) || changed.after.id != changed.before.id) {
            return changed_since(ObjectList<T>::noun);
        }
        if (!is_finite(changed.after)) {
            return no_number(ObjectList<T>::noun);
        }
        *found = changed.after;
        const bool passes = (found != list.begin() && !before<T>()(*(found - 1), *found)) ||
                            (found + 1 != list.end() && !before<T>()(*found, *(found + 1)));
        if (passes && std::same_as<T, Boundary>) {
            return refuse("the ring boundary would pass its neighbour on the path",
                          "move the neighbour first, or delete this one and add one there");
        }
        if (passes) {
            std::ranges::sort(list, before<T>());
        }
        return std::nullopt;
    }

private:
    Reading& reading_;
};

} // namespace

Outcome<Reading> apply(Reading reading, const Edit& edit) {
    if (auto refusal = std::visit(Applying(reading), edit.body)) {
        return tl::unexpected(std::move(*refusal));
    }
    if (auto hanging = fault_of_links(reading)) {
        return tl::unexpected(std::move(*hanging));
    }
    return reading;
}

} // namespace pithward
