#include "libcore/edit/finding_edits.h"

#include "libcore/edit/apply.h"
#include "libcore/edit/boundary_edits.h"
#include "libcore/edit/reading_edits.h"
#include "libcore/edit/require_object.h"

#include <algorithm>

namespace pithward {

namespace {

/// What taking the proposal of a finding does, as parts of the edit that settles it. What is done already, by hand or
/// before the finding was returned, is not done twice.
class Taking {
public:
    Taking(const Reading& reading, const Finding& finding, std::int64_t fresh_id)
        : reading_(reading)
        , finding_(finding)
        , fresh_(fresh_id) {}

    Outcome<std::vector<Edit>> operator()(std::monostate /*words*/) const { return std::vector<Edit>{}; }

    Outcome<std::vector<Edit>> operator()(const ProposeBoundary& proposed) const {
        const auto there = std::ranges::any_of(reading_.boundaries, [&](const Boundary& one) {
            return one.leg == proposed.boundary.leg && one.at == proposed.boundary.at;
        });
        if (there) {
            return std::vector<Edit>{};
        }
        std::vector<Edit> edits;
        for (const Candidate& candidate : reading_.not_annual) {
            if (candidate.leg == proposed.boundary.leg && candidate.at == proposed.boundary.at) {
                edits.push_back({Removed<Candidate>{candidate}});
            }
        }
        Boundary boundary = proposed.boundary;
        boundary.id = BoundaryId{fresh_};
        boundary.confirmation = Confirmation::LookedAt;
        edits.push_back({Added<Boundary>{std::move(boundary)}});
        return edits;
    }

    Outcome<std::vector<Edit>> operator()(const ProposeRemoval& proposed) const {
        const auto gone = find_object(reading_.boundaries, proposed.boundary) == reading_.boundaries.end();
        if (gone &&
            std::ranges::find(reading_.not_annual, finding_.reason, &Candidate::reason) != reading_.not_annual.end()) {
            return std::vector<Edit>{};
        }
        return mark_as_false_ring(reading_, proposed.boundary, CandidateId{fresh_}, finding_.reason).map([](Edit edit) {
            return std::vector<Edit>{std::move(edit)};
        });
    }

    Outcome<std::vector<Edit>> operator()(const ProposeAbsentRing& proposed) const {
        if (std::ranges::find(reading_.absent_rings, proposed.at, &AbsentRing::at) != reading_.absent_rings.end()) {
            return std::vector<Edit>{};
        }
        return add_absent_ring(reading_, proposed.at, AbsentRingId{fresh_}, finding_.reason).map([](Edit edit) {
            return std::vector<Edit>{std::move(edit)};
        });
    }

    Outcome<std::vector<Edit>> operator()(const ProposeBreak& proposed) const {
        Break stretch = proposed.stretch;
        const auto known = find_object(reading_.breaks, stretch.id);
        if (known != reading_.breaks.end()) {
            return std::vector<Edit>{{Changed<Break>{*known, std::move(stretch)}}};
        }
        const auto there = std::ranges::any_of(reading_.breaks, [&](const Break& one) {
            return one.leg == stretch.leg && one.from == stretch.from && one.to == stretch.to;
        });
        if (there) {
            return std::vector<Edit>{};
        }
        stretch.id = BreakId{fresh_};
        return std::vector<Edit>{add_break(std::move(stretch))};
    }

private:
    const Reading& reading_;
    const Finding& finding_;
    std::int64_t fresh_;
};

/// Who keeps a boundary after its finding has looked at it.
std::vector<Edit> looked_at(const Reading& reading, const Finding& finding) {
    if (!finding.boundary || find_object(reading.boundaries, *finding.boundary) == reading.boundaries.end()) {
        return {};
    }
    return {*confirm(reading, *finding.boundary)};
}

const char* label_of(Finding::State state) {
    switch (state) {
    case Finding::State::Open:
        return "Open a finding again";
    case Finding::State::ProposalTaken:
        return "Take the proposal of a finding";
    case Finding::State::KeptAsItIs:
        return "Keep what a finding is about";
    case Finding::State::CannotBeTold:
        return "Say of a finding that it can't be told";
    }
    return "Settle a finding";
}

} // namespace

Outcome<Edit> settle_finding(const Reading& reading, FindingId id, Finding::State state, std::string comment,
                             std::int64_t fresh_id) {
    const auto found = require_object(reading.findings, id);
    if (!found) {
        return tl::unexpected(found.error());
    }
    const Finding& before = *found;
    Outcome<std::vector<Edit>> parts;
    if (state == Finding::State::ProposalTaken) {
        parts = std::visit(Taking(reading, before, fresh_id), before.change);
    } else if (state != Finding::State::Open) {
        parts = looked_at(reading, before);
    }
    return std::move(parts).map([&](std::vector<Edit> edits) {
        Finding after = before;
        after.state = state;
        after.comment = std::move(comment);
        after.verdict = Verdict::None;
        edits.push_back({Changed<Finding>{before, std::move(after)}});
        return Edit{EditGroup{label_of(state), std::move(edits)}};
    });
}

Edit note_finding(const Reading& reading, Finding finding, FindingId fresh) {
    const auto known = find_object(reading.findings, finding.id);
    if (known != reading.findings.end()) {
        return {Changed<Finding>{*known, std::move(finding)}};
    }
    finding.id = fresh;
    return {Added<Finding>{std::move(finding)}};
}

Outcome<Edit> settle_as(const Reading& reading, Finding finding, Finding::State state, std::int64_t fresh_id) {
    const auto known = find_object(reading.findings, finding.id);
    const FindingId id = known == reading.findings.end() ? FindingId{fresh_id} : finding.id;
    finding.state = Finding::State::Open;
    const Edit noted = note_finding(reading, std::move(finding), id);
    return apply(reading, noted)
        .and_then([&](const Reading& with) { return settle_finding(with, id, state, {}, fresh_id + 1); })
        .map([&](Edit settled) {
            return Edit{EditGroup{label_of(state), std::vector<Edit>{noted, std::move(settled)}}};
        });
}

} // namespace pithward
