#pragma once

#include "libcore/specimen/edit.h"

#include <compare>
#include <cstdint>
#include <set>
#include <string>

namespace pithward {

/// What an edit touches, by name: two edits that touch nothing in common can be taken back in any order.
struct Touched {
    enum class Kind { Head, Path, Calibration, Boundary, Candidate, Break, AbsentRing, Finding };

    Kind kind = Kind::Head;
    std::int64_t id = 0; ///< Of an object of a list.
    std::string part;    ///< The scan of a calibration, the field of a head.
    friend auto operator<=>(const Touched&, const Touched&) = default;
};

/// All objects that an edit adds, removes or changes. A locally absent ring touches its boundary too.
[[nodiscard]] std::set<Touched> touched(const Edit& edit);

/// "the path", "ring boundary 12": for messages.
[[nodiscard]] std::string name_of(const Touched& object);

/// The highest number that an edit or a reading gives to any object: what comes next is never used before.
[[nodiscard]] std::int64_t highest_id(const Edit& edit);
[[nodiscard]] std::int64_t highest_id(const Reading& reading);

} // namespace pithward
