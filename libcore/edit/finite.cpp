#include "libcore/edit/finite.h"

#include <algorithm>
#include <cmath>

namespace pithward {

namespace {

bool is_finite(ImagePoint at) {
    return std::isfinite(at.x) && std::isfinite(at.y);
}

bool is_finite(const std::vector<ImagePoint>& points) {
    return std::ranges::all_of(points, [](ImagePoint at) { return is_finite(at); });
}

bool is_finite(const std::optional<Millimetres>& length) {
    return !length || std::isfinite(length->value());
}

/// A boundary or a candidate.
template <typename T>
bool finite_mark(const T& mark) {
    return is_finite(mark.at) && is_finite(mark.curve) && is_finite(mark.latewood) && std::isfinite(mark.tangent) &&
           std::isfinite(mark.sd.value()) && std::isfinite(mark.confidence);
}

} // namespace

bool is_finite(const Boundary& boundary) {
    return finite_mark(boundary);
}

bool is_finite(const Candidate& candidate) {
    return finite_mark(candidate);
}

bool is_finite(const Break& stretch) {
    return is_finite(stretch.from) && is_finite(stretch.to);
}

bool is_finite(const AbsentRing& /*ring*/) {
    return true;
}

bool is_finite(const Finding& finding) {
    const auto* added = std::get_if<ProposeBoundary>(&finding.change);
    const auto* gone = std::get_if<ProposeBreak>(&finding.change);
    return is_finite(finding.at) && (!finding.to || is_finite(*finding.to)) && std::isfinite(finding.probability) &&
           (added == nullptr || is_finite(added->boundary)) && (gone == nullptr || is_finite(gone->stretch));
}

bool is_finite(const Path& path) {
    return std::ranges::all_of(path.legs, [](const Leg& leg) { return is_finite(leg.points); });
}

bool is_finite(const ReadingHead& head) {
    const auto sound = [](const Pith& pith) {
        return is_finite(pith.at) && is_finite(std::optional(pith.distance)) &&
               is_finite(std::optional(pith.distance_low)) && is_finite(std::optional(pith.distance_high));
    };
    return std::isfinite(head.bark_end.probability) && (!head.wood_edge || is_finite(*head.wood_edge)) &&
           (!head.pith || sound(*head.pith));
}

bool is_finite(const Calibration& scale) {
    return std::isfinite(scale.px_per_mm_x) && std::isfinite(scale.px_per_mm_y) && scale.px_per_mm_x > 0.0 &&
           scale.px_per_mm_y > 0.0 && std::isfinite(scale.relative_sd);
}

} // namespace pithward
