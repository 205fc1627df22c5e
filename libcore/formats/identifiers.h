#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace pithward::formats {

/// An identifier to be written, and the room that a format has for it.
struct IdentifierRoom {
    std::string wanted;
    std::size_t longest = 0;              ///< Characters.
    bool minus_at_end_is_unclear = false; ///< Then one of full length must not end in '-'.
};

/// Identifiers that fit and are all different, in the order given. The rule:
///
/// 1. Blanks at both ends are dropped and control characters become '_'; an empty identifier becomes "series".
/// 2. Identifiers that fit now are kept, the first of equal ones.
/// 3. Of the others only letters, digits and what is not ASCII is kept; if that is still too long, its first three
///    characters and as many of its last ones as there is room for.
/// 4. While that is taken, and for all but the first of equal ones: _2, _3, _4, ... at its end, in place of what there
///    is no room for.
[[nodiscard]] std::vector<std::string> fitting_identifiers(const std::vector<IdentifierRoom>& wanted);

} // namespace pithward::formats
