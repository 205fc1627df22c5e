#include "libimaging/boundary/findings.h"

#include "libimaging/boundary/wood/wood_model.h"
#include "libimaging/robust/median.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace pithward::boundary {

namespace {

constexpr double very_narrow_mm = 0.1;
constexpr double outlier = 0.9; ///< Change of ln(width) against the neighbours' median.
constexpr double near_break_mm = 0.3;
constexpr double long_break_mm = 0.6; ///< A longer break may have lost whole rings.
constexpr double hides_one = 0.3;     ///< A broken ring wider than its neighbours by this, as ln(width), may be two.
constexpr double few_pixels = 5.0;    ///< Rings narrower than this are at the limit of what a scan shows; ...
constexpr std::size_t narrow_run = 3; ///< ... so many in a row are one finding.
constexpr double sure_of_bark = 0.95;
constexpr double sure_of_wood = 0.95;

std::string percent(double share) {
    return std::to_string(std::lround(100.0 * share)) + " %";
}

void add(Reading& reading, Finding finding) {
    finding.id = FindingId{static_cast<std::int64_t>(reading.findings.size()) + 1};
    reading.findings.push_back(std::move(finding));
}

double median_near(const std::vector<double>& width_mm, std::size_t at) {
    const std::size_t from = at >= 4 ? at - 4 : 0;
    const std::size_t to = std::min(width_mm.size(), at + 5);
    std::vector<double> near(width_mm.begin() + static_cast<std::ptrdiff_t>(from),
                             width_mm.begin() + static_cast<std::ptrdiff_t>(to));
    return median_in_place(near);
}

/// What the outer end's finding asks about is not asked twice.
bool is_asked_about(const Reading& reading, BoundaryId id) {
    return std::ranges::any_of(reading.findings, [&](const Finding& finding) { return finding.boundary == id; });
}

void doubtful_boundaries(Reading& reading) {
    const double asked_under = wood_model(reading.wood).asked_under;
    for (const Boundary& boundary : reading.boundaries) {
        if (boundary.confidence >= asked_under || is_asked_about(reading, boundary.id)) {
            continue;
        }
        Finding finding;
        finding.kind = FindingKind::PossiblyFalse;
        finding.leg = boundary.leg;
        finding.at = boundary.at;
        finding.boundary = boundary.id;
        finding.reason = "this boundary is annual with a probability of only " + percent(boundary.confidence);
        finding.proposal = "look at it; if the change is soft on both sides or does not cross the core, take it out";
        finding.change = ProposeRemoval{boundary.id};
        finding.probability = 1.0 - boundary.confidence;
        add(reading, std::move(finding));
    }
}

void overlooked_boundaries(Reading& reading) {
    const double overlooked_from = wood_model(reading.wood).overlooked_from;
    for (const Candidate& candidate : reading.not_annual) {
        if (candidate.confidence < overlooked_from) {
            continue;
        }
        Finding finding;
        finding.kind = FindingKind::PossiblyOverlooked;
        finding.leg = candidate.leg;
        finding.at = candidate.at;
        finding.reason =
            "a weak change here may be a boundary (" + percent(candidate.confidence) + "): " + candidate.reason;
        finding.proposal = "look at it; if it closes a year, add it";
        finding.change = ProposeBoundary{boundary_from(candidate, BoundaryId{})};
        finding.probability = candidate.confidence;
        add(reading, std::move(finding));
    }
}

/// A break is one place to look at, however long; where it begins and ends its own entry tells.
ImagePoint middle_of_break(const Break& stretch) {
    return {0.5 * (stretch.from.x + stretch.to.x), 0.5 * (stretch.from.y + stretch.to.y)};
}

void long_breaks(Reading& reading) {
    for (const Break& stretch : reading.breaks) {
        const auto calibration = reading.calibrations.find(reading.path.legs[stretch.leg].scan);
        const double length = calibration->second.distance(stretch.from, stretch.to).value();
        if (length < long_break_mm) {
            continue;
        }
        Finding finding;
        finding.kind = FindingKind::LostWood;
        finding.leg = stretch.leg;
        finding.at = middle_of_break(stretch);
        finding.reason = "the core is broken here; it was taken as a crack that lost no wood";
        finding.proposal = "compare the two edges; if they don't fit, mark lost wood and say how many rings are gone";
        Break lost = stretch;
        lost.kind = Break::Kind::LostWood;
        lost.rings_lost = std::nullopt;
        finding.change = ProposeBreak{lost};
        finding.probability = 0.2;
        add(reading, std::move(finding));
    }
}

/// Cores break along the soft first wood of a year, so a break can hide the boundary beside it.
void breaks_in_wide_rings(Reading& reading, const ProposedRings& rings) {
    for (std::size_t i = 0; i < rings.broken.size(); ++i) {
        const std::size_t ring = rings.broken[i];
        if (rings.width_mm.size() < 5 || ring >= rings.width_mm.size() ||
            std::log(rings.width_mm[ring] / median_near(rings.width_mm, ring)) < hides_one) {
            continue;
        }
        const Break& stretch = reading.breaks[i];
        Finding finding;
        finding.kind = FindingKind::PossiblyOverlooked;
        finding.leg = stretch.leg;
        finding.at = middle_of_break(stretch);
        finding.reason =
            "the core is broken here within a ring wider than its neighbours: a boundary may lie in the break";
        finding.proposal = "look at both edges of the break; if a year ends at one of them, add its boundary there";
        finding.probability = 0.3;
        add(reading, std::move(finding));
    }
}

/// Where rings are as narrow as a few pixels, some may not show at all: one finding over the whole run.
void runs_of_few_pixels(Reading& reading, const std::vector<double>& width_mm) {
    const auto narrow = [&](std::size_t ring) {
        const Leg& leg = reading.path.legs[reading.boundaries[ring].leg];
        return width_mm[ring] * reading.calibrations.at(leg.scan).px_per_mm() < few_pixels;
    };
    const std::size_t rings = std::min(width_mm.size(), reading.boundaries.empty() ? 0 : reading.boundaries.size() - 1);
    for (std::size_t first = 0; first < rings; ++first) {
        std::size_t end = first;
        while (end < rings && narrow(end)) {
            ++end;
        }
        if (end - first >= narrow_run) {
            Finding finding;
            finding.kind = FindingKind::PossiblyOverlooked;
            finding.leg = reading.boundaries[first].leg;
            finding.at = reading.boundaries[first].at;
            finding.to = reading.boundaries[end].at;
            finding.reason = "several rings are only a few pixels wide here: others between them may not show";
            finding.proposal = "look at the whole stretch; scan the core at a higher resolution if rings can't be told";
            finding.probability = 0.3;
            add(reading, std::move(finding));
        }
        first = end;
    }
}

void outer_wood(Reading& reading, const OuterEnd& outer) {
    if (reading.boundaries.empty()) {
        return;
    }
    Finding finding;
    finding.kind = FindingKind::OuterWood;
    finding.at = reading.boundaries.front().at;
    finding.boundary = reading.boundaries.front().id;
    switch (outer.judged) {
    case OuterWood::Complete:
        finding.reason = "the wood under the bark is dark like latewood: growth of the outermost ring had ended";
        break;
    case OuterWood::Unfinished:
        finding.reason =
            "what lies outside the first boundary is even: an unfinished ring, which has no width, or inner bark";
        break;
    default:
        finding.reason = "no bark was seen at the outer end: outer rings may be lost";
        break;
    }
    finding.proposal = "look at the outer end, and say what it is if it is otherwise";
    finding.probability = outer.probability;
    add(reading, std::move(finding));
}

void bark_end(Reading& reading) {
    if (reading.bark_end.probability >= sure_of_bark || reading.path.legs.empty()) {
        return;
    }
    Finding finding;
    finding.kind = FindingKind::BarkEnd;
    finding.at = reading.path.legs.front().points.front();
    finding.reason =
        reading.bark_end.how == "given"
            ? "the bark was said to be at this end, but the wood looks as if it were at the other"
            : "it is not sure which end of the core is bark (" + percent(reading.bark_end.probability) + ")";
    finding.proposal = "look at the curve of the rings and the outer end; turn the path round if it is the other way";
    finding.probability = 1.0 - reading.bark_end.probability;
    add(reading, std::move(finding));
}

void kind_of_wood(Reading& reading, const WoodJudgement& wood) {
    if (wood.probability >= sure_of_wood || reading.path.legs.empty()) {
        return;
    }
    Finding finding;
    finding.kind = FindingKind::Wood;
    finding.at = reading.path.legs.front().points.front();
    finding.reason =
        "the wood was taken as " + word(wood.type) + " (" + percent(wood.probability) + "): " + wood.reason;
    finding.proposal = "choose the kind of wood if it is another one";
    finding.probability = 1.0 - wood.probability;
    add(reading, std::move(finding));
}

} // namespace

void add_flags(Reading& reading, const std::vector<double>& width_mm) {
    for (std::size_t k = 0; k < reading.boundaries.size(); ++k) {
        Boundary& boundary = reading.boundaries[k];
        const Calibration& calibration = reading.calibrations.at(reading.path.legs[boundary.leg].scan);
        if (boundary.confidence < sure) {
            boundary.flags.insert(Flag::Faint);
        }
        if (k < width_mm.size() && width_mm.size() >= 5) {
            if (width_mm[k] < very_narrow_mm) {
                boundary.flags.insert(Flag::VeryNarrow);
            }
            if (std::abs(std::log(std::max(width_mm[k], 1e-3) / median_near(width_mm, k))) > outlier) {
                boundary.flags.insert(Flag::WidthOutlier);
            }
        }
        for (const Break& stretch : reading.breaks) {
            if (std::min(calibration.distance(boundary.at, stretch.from),
                         calibration.distance(boundary.at, stretch.to)) < Millimetres(near_break_mm)) {
                boundary.flags.insert(Flag::NearBreak);
            }
        }
    }
}

void add_findings(Reading& reading, const ProposedRings& rings, const OuterEnd& outer, bool outer_given,
                  const WoodJudgement& wood) {
    kind_of_wood(reading, wood);
    bark_end(reading);
    if (!outer_given) {
        outer_wood(reading, outer);
    }
    doubtful_boundaries(reading);
    overlooked_boundaries(reading);
    long_breaks(reading);
    breaks_in_wide_rings(reading, rings);
    runs_of_few_pixels(reading, rings.width_mm);
}

} // namespace pithward::boundary
