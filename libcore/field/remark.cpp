#include "libcore/field/remark.h"

namespace pithward::field {

Finding finding_of(const Reading& reading, const Remark& remark) {
    const bool at_bark = remark.end == Remark::End::Bark;
    Finding finding;
    finding.kind = FindingKind::FieldSheet;
    if (!reading.boundaries.empty()) {
        const Boundary& boundary = at_bark ? reading.boundaries.front() : reading.boundaries.back();
        finding.leg = boundary.leg;
        finding.at = boundary.at;
        finding.boundary = boundary.id;
    } else if (!reading.path.legs.empty()) {
        finding.leg = at_bark ? 0 : reading.path.legs.size() - 1;
        const auto& points = reading.path.legs[finding.leg].points;
        finding.at = points.empty() ? ImagePoint{} : at_bark ? points.front() : points.back();
    }
    finding.reason = remark.reason;
    finding.proposal = remark.proposal;
    finding.probability = remark.probability;
    return finding;
}

} // namespace pithward::field
