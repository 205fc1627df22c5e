#include "tests/accuracy/pith_score.h"

#include "libcore/pith/judge_pith.h"

#include <algorithm>
#include <cmath>

namespace pithward::accuracy {

namespace {

constexpr double millimetres_per_inch = 25.4;
constexpr double reach_px = 4.0; ///< A true boundary this near to the innermost one found is that one.

double along(const demo::Truth& truth, ImagePoint at) {
    const ImagePoint way = truth.path.back() - truth.path.front();
    const ImagePoint to = at - truth.path.front();
    return (to.x * way.x + to.y * way.y) / std::hypot(way.x, way.y);
}

double beside(const demo::Truth& truth, ImagePoint at) {
    const ImagePoint way = truth.path.back() - truth.path.front();
    const ImagePoint to = at - truth.path.front();
    return std::abs(to.x * way.y - to.y * way.x) / std::hypot(way.x, way.y);
}

double inner_width(const demo::Truth& truth) {
    constexpr std::size_t innermost = 5;
    double sum = 0.0;
    std::size_t count = 0;
    for (auto width = truth.widths.rbegin(); width != truth.widths.rend() && count < innermost; ++width) {
        if (width->radial_mm && *width->radial_mm > 0.0) {
            sum += *width->radial_mm;
            ++count;
        }
    }
    return count > 0 ? sum / static_cast<double>(count) : 0.0;
}

std::optional<PithAnswer> answer_of(const std::optional<Pith>& pith, const std::string& source) {
    if (pith) {
        for (const OtherPith& other : pith->others) {
            if (other.method.find(source) != std::string::npos) {
                return PithAnswer{other.distance.value(),
                                  other.distance_low.value(),
                                  other.distance_high ? other.distance_high->value() : 1e9,
                                  other.missing_rings,
                                  0,
                                  0};
            }
        }
    }
    return std::nullopt;
}

} // namespace

PithScore pith_score(const demo::Truth& truth, const Reading& reading, const RingSeries& series) {
    const double px_per_mm = truth.dpi / millimetres_per_inch;
    const ImagePoint innermost = reading.boundaries.back().at;
    const ImagePoint off = truth.pith.at - innermost;
    PithScore score;
    score.name = truth.name;
    score.inside = truth.pith.inside;
    score.offset_mm = beside(truth, truth.pith.at) / px_per_mm;
    score.width_mm = inner_width(truth);
    score.distance_mm = std::hypot(off.x, off.y) / px_per_mm;
    const auto overlooked = std::ranges::count_if(truth.boundaries, [&](const demo::TrueBoundary& boundary) {
        return along(truth, boundary.at) > along(truth, innermost) + reach_px;
    });
    // With the pith on the core the innermost ring has a width, unless boundaries were overlooked beyond the innermost.
    const bool first_of_many = truth.pith.inside && overlooked > 0;
    score.rings = truth.pith.missing_rings + static_cast<int>(overlooked) + (first_of_many ? 1 : 0);
    const PithJudgement judgement = judge_pith(reading, series);
    score.findings = static_cast<int>(judgement.findings.size());
    if (const auto& pith = judgement.pith) {
        score.said_inside = pith->inside;
        score.ours = PithAnswer{pith->distance.value(), pith->distance_low.value(), pith->distance_high.value(),
                                pith->missing_rings,    pith->missing_low,          pith->missing_high};
    }
    score.duncan = answer_of(judgement.pith, "Duncan");
    score.applequist = answer_of(judgement.pith, "Applequist");
    return score;
}

} // namespace pithward::accuracy
