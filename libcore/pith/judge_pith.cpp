#include "libcore/pith/judge_pith.h"

#include "libcore/pith/arcs.h"
#include "libcore/pith/bends.h"
#include "libcore/pith/concentric.h"
#include "libcore/pith/pith_posterior.h"
#include "libcore/pith/published.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace pithward {

using namespace pith;

namespace {

constexpr std::size_t least_boundaries = 3;
constexpr std::size_t arcs_of_circles = 5; ///< Innermost arcs that concentric circles are laid on.
constexpr double most_spread = 6.0;        ///< Upper end of the interval over its lower end: more says nothing.
constexpr double farthest_told_mm = 150.0; ///< An interval that reaches farther says nothing.
constexpr double beyond_end_mm = 0.5;      ///< A path to the pith may end a little before it.
constexpr double better_part = 0.8;        ///< Of a ring's width.

/// One digit after the point.
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

/// Widths of the innermost rings, innermost first; absent rings and gaps left out, and a ring that ends at a pith that
/// was judged before.
std::vector<double> inner_widths(const Reading& reading, const RingSeries& series) {
    std::vector<double> widths;
    auto ring = series.rings.rbegin();
    if (reading.pith && reading.pith->inside && reading.pith->missing_rings == 0 && ring != series.rings.rend()) {
        ++ring;
    }
    for (; ring != series.rings.rend(); ++ring) {
        if (ring->width && ring->width->value() > 0.0) {
            widths.push_back(ring->width->value());
        }
    }
    return widths;
}

class Judge {
public:
    Judge(const Reading& reading, const RingSeries& series, const PithKnowledge& knowledge)
        : reading_(reading)
        , knowledge_(knowledge)
        , widths_(inner_widths(reading, series)) {}

    PithJudgement judge() {
        if (const auto why = unusable()) {
            nothing(*why);
            return std::move(judgement_);
        }
        const InnerArcs inner = inner_arcs(reading_);
        if (inner.arcs.empty()) {
            nothing("the curve of the innermost rings could not be traced");
            return std::move(judgement_);
        }
        if (const auto why = wrongly_bent(inner.arcs)) {
            nothing(*why);
            return std::move(judgement_);
        }
        const PithPosterior posterior = pith_posterior(inner.arcs);
        const DistanceRange ours{posterior.distance_quantile(0.5), posterior.distance_quantile(0.05),
                                 posterior.distance_quantile(0.95)};
        if (*ours.high_mm > farthest_told_mm || *ours.high_mm > most_spread * ours.low_mm) {
            nothing("the rings at the inner end are too flat to tell where the pith is");
            return std::move(judgement_);
        }
        if (knowledge_.stem_radius && ours.low_mm > 2.0 * knowledge_.stem_radius->value()) {
            nothing("the centre of the rings' curve would lie beyond the stem");
            return std::move(judgement_);
        }
        Pith pith = pith_of(inner, posterior, ours);
        add_others(inner, posterior, ours, pith);
        judgement_.pith = std::move(pith);
        return std::move(judgement_);
    }

private:
    [[nodiscard]] std::optional<std::string> unusable() const {
        if (reading_.boundaries.size() < least_boundaries) {
            return "with two boundaries or fewer nothing can be said of the pith";
        }
        const std::size_t last = reading_.path.legs.size() - 1;
        if (reading_.boundaries.back().leg != last || !reading_.calibrations.contains(reading_.path.legs[last].scan)) {
            return "the innermost leg of the path has no boundary, so nothing can be said of the pith";
        }
        return widths_.empty()
                   ? std::optional<std::string>("no ring has a width, so rings to the pith can't be counted")
                   : std::nullopt;
    }

    void nothing(const std::string& why) {
        judgement_.findings.push_back(
            pith_finding(reading_, why, "look at the inner end; without the pith the age is only a least age", 1.0));
    }

    Pith pith_of(const InnerArcs& inner, const PithPosterior& posterior, const DistanceRange& ours) {
        Pith pith;
        pith.at = inner.frame.on_scan(posterior.middle());
        pith.distance = Millimetres(ours.middle_mm);
        pith.distance_low = Millimetres(ours.low_mm);
        pith.distance_high = Millimetres(*ours.high_mm);
        const RingCount count = rings_to_pith(posterior, widths_, knowledge_.growth);
        pith.missing_rings = count.rings;
        pith.missing_low = count.low;
        pith.missing_high = count.high;
        pith.inside = on_core(inner, posterior, ours);
        if (pith.inside && count.low <= 1) {
            pith.missing_rings = pith.missing_low = pith.missing_high = 0;
        } else if (pith.inside) {
            judgement_.findings.push_back(
                pith_finding(reading_,
                             "the pith lies on the core, and about " + std::to_string(count.rings) +
                                 " rings lie between the innermost boundary and it",
                             "mark the boundaries between, or draw the path to the pith", 0.8));
        }
        return pith;
    }

    /// Whether the pith lies on the core: more likely than not by its place, or where the path goes on by the better
    /// part of a ring without another boundary and ends at a distance that the curves allow.
    [[nodiscard]] bool on_core(const InnerArcs& inner, const PithPosterior& posterior,
                               const DistanceRange& ours) const {
        double probability = 0.0;
        for (const PithPlace& place : posterior.places()) {
            const Eigen::Vector2d at = place.at();
            const bool here = std::abs(at.y()) < inner.half_breadth_mm && at.x() < inner.path_end_mm + beyond_end_mm;
            probability += here ? place.probability : 0.0;
        }
        const bool goes_on = inner.path_end_mm > better_part * widths_.front();
        return probability > 0.5 || (goes_on && inner.path_end_mm > ours.low_mm && inner.path_end_mm < *ours.high_mm);
    }

    void add_other(const std::string& method, const DistanceRange& range, const DistanceRange& ours, Pith& pith) {
        OtherPith other;
        other.method = method;
        other.distance = Millimetres(range.middle_mm);
        other.distance_low = Millimetres(range.low_mm);
        if (range.high_mm) {
            other.distance_high = Millimetres(*range.high_mm);
        }
        other.missing_rings = rings_of_mean_width(range.middle_mm, widths_);
        pith.others.push_back(std::move(other));
        if (!range.meets(ours)) {
            const std::string theirs =
                range.high_mm ? range_text(range.low_mm, *range.high_mm) : "more than " + mm_text(range.low_mm);
            judgement_.findings.push_back(pith_finding(
                reading_,
                "the pith is " + range_text(ours.low_mm, *ours.high_mm) +
                    " from the innermost boundary by the curve of the rings, but " + theirs + " by " + method,
                "look at the innermost rings; where growth was uneven, trust neither", 0.5));
        }
    }

    void add_others(const InnerArcs& inner, const PithPosterior& posterior, const DistanceRange& ours, Pith& pith) {
        const Arc& innermost = inner.arcs.front();
        const auto shape = chord_and_height(innermost);
        const double sd = height_sd(innermost, posterior.swell_mm());
        if (shape && shape->height_mm > sd) {
            const double outward = innermost.at.norm(); // where the innermost curve is not the innermost boundary's
            DistanceRange range = radius_range(shape->chord_mm, duncan_radius(*shape), sd);
            range.middle_mm = std::max(0.0, range.middle_mm - outward);
            range.low_mm = std::max(0.0, range.low_mm - outward);
            add_other("arc height and chord (Duncan 1989)", range, ours, pith);
        }
        std::vector<std::vector<Eigen::Vector2d>> curves;
        for (std::size_t k = 0; k < std::min(arcs_of_circles, inner.arcs.size()); ++k) {
            curves.push_back(inner.arcs[k].points);
        }
        const auto centre = concentric_centre(curves, posterior.middle());
        if (centre && centre->x() > 0.0 && shape) {
            const double chord = std::min(shape->chord_mm, 2.0 * centre->norm());
            add_other("concentric circles (Applequist 1958)", radius_range(chord, centre->norm(), sd), ours, pith);
        }
        if (knowledge_.stem_radius) {
            add_other("the stem's radius", distance_by_stem(knowledge_.stem_radius->value(), wood_length()), ours,
                      pith);
        }
    }

    /// Along the rings, since a core need not be square to them.
    [[nodiscard]] double wood_length() const {
        double sum = 0.0;
        for (const double width : widths_) {
            sum += width;
        }
        return sum;
    }

    const Reading& reading_;
    const PithKnowledge& knowledge_;
    std::vector<double> widths_;
    PithJudgement judgement_;
};

} // namespace

PithJudgement judge_pith(const Reading& reading, const RingSeries& series, const PithKnowledge& knowledge) {
    return Judge(reading, series, knowledge).judge();
}

Reading with_pith(Reading reading, const RingSeries& series, const PithKnowledge& knowledge) {
    PithJudgement judgement = judge_pith(reading, series, knowledge);
    std::erase_if(reading.findings, [](const Finding& finding) {
        return finding.kind == FindingKind::Pith && finding.state == Finding::State::Open;
    });
    std::int64_t last = 0;
    for (const Finding& finding : reading.findings) {
        last = std::max(last, finding.id.value);
    }
    for (Finding& finding : judgement.findings) {
        finding.id = FindingId{++last};
        reading.findings.push_back(std::move(finding));
    }
    reading.pith = std::move(judgement.pith);
    return reading;
}

} // namespace pithward
