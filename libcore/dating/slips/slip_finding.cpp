#include "libcore/dating/slips/slip_finding.h"

#include <algorithm>

namespace pithward::dating {

namespace {

struct ProposalWords {
    std::string year;

    std::string operator()(std::monostate /*words*/) const { return "look at ring " + year; }
    std::string operator()(const ProposeBoundary& /*change*/) const {
        return "put a boundary in here, the inner one of ring " + year;
    }
    std::string operator()(const ProposeRemoval& /*change*/) const {
        return "take this boundary out: it divides ring " + year;
    }
    std::string operator()(const ProposeAbsentRing& /*change*/) const {
        return "mark ring " + year + " as locally absent";
    }
    std::string operator()(const ProposeBreak& /*change*/) const { return "look at ring " + year; }
};

bool puts_a_ring_in(const ProposedChange& change) {
    return std::holds_alternative<ProposeBoundary>(change) || std::holds_alternative<ProposeAbsentRing>(change);
}

bool undecided(const Finding& finding) {
    return finding.kind == FindingKind::Slip && finding.state != Finding::State::ProposalTaken;
}

/// Whether a finding is about a slip, whose years are `shift` more than the reading gives.
bool is_about(const Finding& finding, const Slip& slip, int shift, std::span<const DoubtfulPlace> wood) {
    const bool missing = slip.kind == Slip::Kind::RingMissing;
    return puts_a_ring_in(finding.change) == missing && std::ranges::any_of(wood, [&](const DoubtfulPlace& place) {
               return place.leg == finding.leg && place.at == finding.at &&
                      looked_at_for(slip, place.ring.value() + shift);
           });
}

} // namespace

Finding slip_finding(const Slip& slip, const SlipPlace& place) {
    Finding finding;
    finding.kind = FindingKind::Slip;
    finding.leg = place.place.leg;
    finding.at = place.place.at;
    if (const auto* removal = std::get_if<ProposeRemoval>(&place.place.change)) {
        finding.boundary = removal->boundary;
    }
    constexpr double as_good_as_not = 0.5;
    finding.reason = std::string("the other cores of the site ") +
                     (slip.probability < as_good_as_not ? "hint" : "show") + " that " + words_of(slip) + "; " +
                     place.place.reason;
    finding.proposal = std::visit(ProposalWords{std::to_string(place.ring_year)}, place.place.change);
    finding.change = place.place.change;
    finding.probability = place.probability;
    return finding;
}

std::vector<std::optional<FindingId>> findings_of_slips(std::span<const Slip> slips, int whole_shift,
                                                        std::span<const DoubtfulPlace> wood,
                                                        std::span<const Finding> findings) {
    std::vector<std::optional<FindingId>> result;
    result.reserve(slips.size());
    int shift = whole_shift;
    for (const Slip& slip : slips) {
        std::optional<FindingId> latest;
        for (const Finding& finding : findings) {
            if (undecided(finding) && is_about(finding, slip, shift, wood) &&
                (!latest || latest->value < finding.id.value)) {
                latest = finding.id;
            }
        }
        result.push_back(latest);
        shift += shift_inside(slip);
    }
    return result;
}

} // namespace pithward::dating
