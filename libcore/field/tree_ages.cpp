#include "libcore/field/tree_ages.h"

#include <algorithm>
#include <cmath>

namespace pithward::field {

namespace {

constexpr double alike_height_cm = 20.0;

std::string years_text(const YearRange& range) {
    return std::to_string(range.year.value()) + " (" + std::to_string(range.low.value()) + " to " +
           std::to_string(range.high.value()) + ")";
}

/// What ends the reason, and names the other core.
std::string by_core(const Core& other) {
    return " by core " + other.id + " of the same tree";
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
                      by_core(other.core),
                  "check the dating and the pith of both", 0.8, Remark::End::Inner};
}

const Finding* tree_ages_finding(const Reading& reading, const Core& other) {
    const auto found = std::ranges::find_if(reading.findings, [tail = by_core(other)](const Finding& finding) {
        return finding.kind == FindingKind::FieldSheet && finding.reason.ends_with(tail);
    });
    return found == reading.findings.end() ? nullptr : &*found;
}

} // namespace pithward::field
