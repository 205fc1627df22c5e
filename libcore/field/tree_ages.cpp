#include "libcore/field/tree_ages.h"

#include <cmath>

namespace pithward::field {

namespace {

constexpr double alike_height_cm = 20.0;

std::string years_text(const YearRange& range) {
    return std::to_string(range.year.value()) + " (" + std::to_string(range.low.value()) + " to " +
           std::to_string(range.high.value()) + ")";
}

} // namespace

std::optional<Remark> tree_ages_remark(const DatedPith& one, const DatedPith& other) {
    const auto& height = one.core.core_height_cm;
    const auto& other_height = other.core.core_height_cm;
    if (height && other_height && std::abs(*height - *other_height) > alike_height_cm) {
        return std::nullopt;
    }
    if (one.pith.low <= other.pith.high && other.pith.low <= one.pith.high) {
        return std::nullopt;
    }
    return Remark{"the pith's year is " + years_text(one.pith) + " by this core, but " + years_text(other.pith) +
                      " by core " + other.core.id + " of the same tree",
                  "check the dating and the pith of both", 0.8, Remark::End::Inner};
}

} // namespace pithward::field
