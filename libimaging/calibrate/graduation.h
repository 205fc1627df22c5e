#pragma once

#include "libcore/specimen/units.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace pithward {

/// The distance from one mark of a ruler to the next.
enum class Graduation { Millimetre, HalfMillimetre, SixteenthInch };

/// What rulers of one graduation look like. A new kind is one value above and one line in the list (graduation.cpp).
struct GraduationKind {
    Graduation graduation = Graduation::Millimetre;
    std::string word;                ///< "1mm", "0.5mm", "1/16in".
    Millimetres spacing;             ///< From mark to mark.
    std::vector<int> longer_at_each; ///< Each so many marks one is longer; rising, each a multiple of the one before.

    /// How many steps longer than the shortest marks the mark of this number is; 0 is the first of the longest marks.
    [[nodiscard]] int rank(int number) const;
    /// After so many marks their lengths repeat.
    [[nodiscard]] int cycle() const { return longer_at_each.back(); }
};

[[nodiscard]] std::span<const GraduationKind> graduation_kinds();
[[nodiscard]] const GraduationKind& kind_of(Graduation graduation);
[[nodiscard]] std::optional<Graduation> graduation_from(std::string_view word);

} // namespace pithward
