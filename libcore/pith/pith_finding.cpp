#include "libcore/pith/pith_finding.h"

#include <cmath>
#include <utility>

namespace pithward::pith {

std::string mm_text(double mm) {
    const long tenths = std::lround(10.0 * mm);
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " mm";
}

std::string range_text(double low_mm, double high_mm) {
    return mm_text(low_mm) + " to " + mm_text(high_mm);
}

Finding pith_finding(const Reading& reading, std::string reason, std::string proposal, double probability) {
    Finding finding;
    finding.kind = FindingKind::Pith;
    finding.leg = reading.path.legs.empty() ? 0 : reading.path.legs.size() - 1;
    if (!reading.boundaries.empty()) {
        finding.leg = reading.boundaries.back().leg;
        finding.at = reading.boundaries.back().at;
        finding.boundary = reading.boundaries.back().id;
    } else if (!reading.path.legs.empty() && !reading.path.legs.back().points.empty()) {
        finding.at = reading.path.legs.back().points.back();
    }
    finding.reason = std::move(reason);
    finding.proposal = std::move(proposal);
    finding.probability = probability;
    return finding;
}

} // namespace pithward::pith
