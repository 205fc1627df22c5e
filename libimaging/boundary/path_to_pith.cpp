#include "libimaging/boundary/path_to_pith.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace pithward::boundary {

namespace {

constexpr double turning_mm = 3.0; ///< The path turns to the pith over so much of its end.
constexpr double sure_of_pith = 0.95;
constexpr double placed_within_mm = 0.5; ///< Nine in ten rendered piths on the core were.

} // namespace

std::vector<ImagePoint> path_to_pith(const std::vector<ImagePoint>& middle_line, const Calibration& calibration,
                                     ImagePoint pith, double s_mm, bool forward) {
    std::vector<ImagePoint> line = middle_line;
    double left_mm = s_mm - turning_mm;
    if (!forward) {
        double length_mm = 0.0;
        for (std::size_t i = 0; i + 1 < line.size(); ++i) {
            length_mm += calibration.distance(line[i], line[i + 1]).value();
        }
        std::ranges::reverse(line);
        left_mm = length_mm - s_mm - turning_mm;
    }
    std::vector<ImagePoint> path{line.front()};
    for (std::size_t i = 0; i + 1 < line.size() && left_mm > 0.0; ++i) {
        const double step_mm = calibration.distance(line[i], line[i + 1]).value();
        const double share = std::min(1.0, left_mm / step_mm);
        path.push_back(line[i] + (line[i + 1] - line[i]) * share);
        left_mm -= step_mm;
    }
    path.push_back(pith);
    return path;
}

void add_seen_pith(Reading& reading, const PithOnCore& pith) {
    if (pith.path_ends_there && pith.probability >= sure_of_pith) {
        if (!reading.boundaries.empty()) {
            const Boundary& innermost = reading.boundaries.back();
            const Calibration& scale = reading.calibrations.at(reading.path.legs[innermost.leg].scan);
            const Millimetres distance = scale.distance(innermost.at, pith.at);
            reading.pith = Pith{.inside = true,
                                .at = pith.at,
                                .distance = distance,
                                .distance_low = Millimetres(std::max(0.0, distance.value() - placed_within_mm)),
                                .distance_high = distance + Millimetres(placed_within_mm),
                                .source = Pith::Source::Seen};
        }
        return;
    }
    const std::string percent = std::to_string(std::lround(100.0 * pith.probability)) + " %";
    Finding finding;
    finding.id = FindingId{static_cast<std::int64_t>(reading.findings.size()) + 1};
    finding.kind = FindingKind::PastPith;
    finding.at = pith.at;
    if (pith.path_ends_there) {
        finding.reason = "the rings seem to bend round a pith here, so the path ends (" + percent + ")";
        finding.proposal = "look at the rings; if they bend the same way on both sides, draw one path along the core";
        finding.probability = 1.0 - pith.probability;
    } else {
        finding.reason = "the rings may bend round a pith here (" + percent + "): the core may go past it";
        finding.proposal =
            "look at the rings; if they bend the other way beyond, draw a path from each end to the pith";
        finding.probability = pith.probability;
    }
    reading.findings.push_back(std::move(finding));
}

} // namespace pithward::boundary
