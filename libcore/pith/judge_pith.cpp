#include "libcore/pith/judge_pith.h"

#include "libcore/pith/arcs.h"
#include "libcore/pith/bends.h"
#include "libcore/pith/concentric.h"
#include "libcore/pith/inner_widths.h"
#include "libcore/pith/on_core.h"
#include "libcore/pith/pith_by_hand.h"
#include "libcore/pith/pith_finding.h"
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

class Judge {
public:
    Judge(const Reading& reading, const RingSeries& series, const PithKnowledge& knowledge, const Work& work)
        : reading_(reading)
        , series_(series)
        , knowledge_(knowledge)
        , work_(work)
        , widths_(inner_widths(reading, series)) {}

    PithJudgement judge() {
        if (reading_.pith && reading_.pith->source == Pith::Source::Hand) {
            judge_by_hand();
            return std::move(judgement_);
        }
        if (const auto seen = seen_pith()) {
            judge_seen(*seen);
            return std::move(judgement_);
        }
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
        const PithPosterior posterior = pith_posterior(inner.arcs, work_);
        const DistanceRange ours = range_of(posterior);
        if (!tells(ours)) {
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
    /// A pith that was seen on the core and that the path was therefore led to. (One that was judged here before lies
    /// where the path's end is not.)
    [[nodiscard]] std::optional<Pith> seen_pith() const {
        const bool led = reading_.pith && reading_.pith->inside && !reading_.path.legs.empty() &&
                         !reading_.path.legs.back().points.empty() &&
                         reading_.path.legs.back().points.back() == reading_.pith->at;
        return led ? reading_.pith : std::nullopt;
    }

    /// Keeps the place that a person gave, with what follows from it by now.
    void judge_by_hand() {
        auto pith = pith_by_hand(reading_, series_, reading_.pith->at, knowledge_.growth);
        if (!pith) {
            judgement_.pith = reading_.pith;
            judgement_.findings.push_back(pith_finding(
                reading_, "the pith was placed by hand, but " + pith.error().what, pith.error().remedy, 1.0));
            return;
        }
        if (pith->inside && pith->missing_rings > 0) {
            tell_overlooked(pith->missing_rings);
        }
        add_methods_beside(*pith);
        judgement_.pith = std::move(*pith);
    }

    /// Keeps the place that was seen; what the curves say stands beside it.
    void judge_seen(Pith pith) {
        pith.others.clear();
        const DistanceRange seen{pith.distance.value(), pith.distance_low.value(), pith.distance_high.value()};
        if (!widths_.empty()) {
            const PithPosterior places({{std::max(seen.low_mm, 0.01), 0.0, 0.25, 0.0},
                                        {std::max(seen.middle_mm, 0.01), 0.0, 0.5, 0.0},
                                        {std::max(*seen.high_mm, 0.01), 0.0, 0.25, 0.0}});
            count_on_core(rings_to_pith(places, widths_, knowledge_.growth), pith);
        }
        add_methods_beside(pith);
        judgement_.pith = std::move(pith);
    }

    /// What the curves and published methods say beside a pith whose place is kept.
    void add_methods_beside(Pith& pith) {
        const DistanceRange kept{pith.distance.value(), pith.distance_low.value(), pith.distance_high.value()};
        const InnerArcs inner = unusable() ? InnerArcs{InnerFrame({}, {1.0, 0.0}, {1.0, 1.0})} : inner_arcs(reading_);
        if (!inner.arcs.empty() && !wrongly_bent(inner.arcs)) {
            const PithPosterior posterior = pith_posterior(inner.arcs, work_);
            const DistanceRange curves = range_of(posterior);
            if (tells(curves)) {
                add_other("the curve of the rings", curves, kept, pith);
                add_others(inner, posterior, kept, pith);
            }
        }
    }

    [[nodiscard]] static DistanceRange range_of(const PithPosterior& posterior) {
        return {posterior.distance_quantile(0.5), posterior.distance_quantile(0.05), posterior.distance_quantile(0.95)};
    }
    [[nodiscard]] static bool tells(const DistanceRange& range) {
        return *range.high_mm <= farthest_told_mm && *range.high_mm <= most_spread * range.low_mm;
    }

    /// No rings are missing to a pith on the core, unless more lie between than the one that the innermost boundary
    /// closes. Where that may be but is not likely, the interval says so.
    void count_on_core(const RingCount& count, Pith& pith) {
        const bool overlooked = count.low > 1;
        pith.missing_rings = overlooked ? count.rings : 0;
        pith.missing_low = overlooked ? count.low : 0;
        pith.missing_high = count.high > 1 ? count.high : 0;
        if (overlooked) {
            tell_overlooked(count.rings);
        }
    }

    void tell_overlooked(int rings) {
        judgement_.findings.push_back(pith_finding(reading_,
                                                   "the pith lies on the core, and about " + std::to_string(rings) +
                                                       " rings lie between the innermost boundary and it",
                                                   "mark the boundaries between, or draw the path to the pith", 0.8));
    }

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
        // Nobody is asked to answer what can't be told: it stands in the list, settled so, and a second person sees it.
        Finding finding =
            pith_finding(reading_, why, "look at the inner end; without the pith the age is only a least age", 1.0);
        finding.state = Finding::State::CannotBeTold;
        judgement_.findings.push_back(std::move(finding));
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
        pith.inside = on_core(inner, posterior, ours, widths_.front());
        if (pith.inside) {
            count_on_core(count, pith);
        }
        return pith;
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
            judgement_.findings.push_back(
                pith_finding(reading_,
                             "the pith is " + range_text(ours.low_mm, *ours.high_mm) +
                                 " from the innermost boundary, but " + theirs + " by " + method,
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
    const RingSeries& series_;
    const PithKnowledge& knowledge_;
    const Work& work_;
    std::vector<double> widths_;
    PithJudgement judgement_;
};

} // namespace

PithJudgement judge_pith(const Reading& reading, const RingSeries& series, const PithKnowledge& knowledge,
                         const Work& work) {
    return Judge(reading, series, knowledge, work).judge();
}

} // namespace pithward
