#include "libcore/edit/boundary_edits.h"

#include "libcore/edit/object_lists.h"
#include "libcore/edit/require_object.h"

#include <set>

namespace pithward {

namespace {

/// A boundary after a change, as an edit.
template <typename Change>
Outcome<Edit> changed_boundary(const Reading& reading, BoundaryId id, Change change) {
    return require_object(reading.boundaries, id).map([&](const Boundary& before) {
        Boundary after = before;
        change(after);
        return Edit{Changed<Boundary>{before, std::move(after)}};
    });
}

void put(Boundary& boundary, const BoundaryPlace& place) {
    boundary.leg = place.leg;
    boundary.at = place.at;
    boundary.tangent = line_direction(place.tangent);
    boundary.sd = place.sd;
    boundary.sd_assumed = place.sd_assumed;
    boundary.curve = place.curve;
    boundary.latewood = place.latewood;
    boundary.origin = Origin::Analyst;
    boundary.confirmation = Confirmation::LookedAt;
}

/// The parts that take a boundary away, with what stands at it.
std::vector<Edit> removals(const Reading& reading, const Boundary& boundary) {
    std::vector<Edit> edits;
    for (const AbsentRing& ring : reading.absent_rings) {
        if (ring.at == boundary.id) {
            edits.push_back({Removed<AbsentRing>{ring}});
        }
    }
    edits.push_back({Removed<Boundary>{boundary}});
    return edits;
}

Candidate candidate_from(const Boundary& boundary, CandidateId id, std::string reason) {
    Candidate candidate;
    candidate.id = id;
    candidate.leg = boundary.leg;
    candidate.at = boundary.at;
    candidate.tangent = boundary.tangent;
    candidate.sd = boundary.sd;
    candidate.confidence = boundary.confidence;
    candidate.flags = boundary.flags;
    candidate.reason = std::move(reason);
    candidate.curve = boundary.curve;
    candidate.latewood = boundary.latewood;
    return candidate;
}

} // namespace

Outcome<Edit> confirm(const Reading& reading, BoundaryId id) {
    return changed_boundary(reading, id, [](Boundary& boundary) { boundary.confirmation = Confirmation::LookedAt; });
}

Edit confirm_above(const Reading& reading, double confidence) {
    std::set<BoundaryId> doubtful;
    for (const Finding& finding : reading.findings) {
        if (finding.state == Finding::State::Open && finding.boundary) {
            doubtful.insert(*finding.boundary);
        }
    }
    EditGroup group{"Confirm ring boundaries in bulk", {}};
    for (const Boundary& before : reading.boundaries) {
        if (before.confirmation != Confirmation::None || before.confidence < confidence ||
            doubtful.contains(before.id)) {
            continue;
        }
        Boundary after = before;
        after.confirmation = Confirmation::InBulk;
        group.edits.push_back({Changed<Boundary>{before, std::move(after)}});
    }
    return {std::move(group)};
}

Edit add_boundary(const BoundaryPlace& place, BoundaryId fresh) {
    Boundary boundary;
    boundary.id = fresh;
    put(boundary, place);
    return {Added<Boundary>{std::move(boundary)}};
}

Outcome<Edit> delete_boundary(const Reading& reading, BoundaryId id) {
    return require_object(reading.boundaries, id).map([&](const Boundary& boundary) {
        std::vector<Edit> edits = removals(reading, boundary);
        return edits.size() == 1 ? std::move(edits.front())
                                 : Edit{EditGroup{"Remove a ring boundary", std::move(edits)}};
    });
}

Outcome<Edit> move_boundary(const Reading& reading, BoundaryId id, const BoundaryPlace& place) {
    return changed_boundary(reading, id, [&](Boundary& boundary) { put(boundary, place); });
}

Outcome<Edit> turn_boundary(const Reading& reading, BoundaryId id, double tangent) {
    return changed_boundary(reading, id, [&](Boundary& boundary) {
        boundary.tangent = line_direction(tangent);
        boundary.curve.clear();
        boundary.origin = Origin::Analyst;
        boundary.confirmation = Confirmation::LookedAt;
    });
}

Outcome<Edit> mark_as_false_ring(const Reading& reading, BoundaryId id, CandidateId fresh, std::string reason) {
    return require_object(reading.boundaries, id).map([&](const Boundary& boundary) {
        std::vector<Edit> edits = removals(reading, boundary);
        edits.push_back({Added<Candidate>{candidate_from(boundary, fresh, std::move(reason))}});
        return Edit{EditGroup{"Mark as a false ring", std::move(edits)}};
    });
}

Outcome<Edit> take_candidate(const Reading& reading, CandidateId id, BoundaryId fresh) {
    return require_object(reading.not_annual, id).map([&](const Candidate& candidate) {
        Boundary boundary = boundary_from(candidate, fresh);
        boundary.confirmation = Confirmation::LookedAt;
        return Edit{EditGroup{"Take a candidate as a ring boundary",
                              {{Removed<Candidate>{candidate}}, {Added<Boundary>{std::move(boundary)}}}}};
    });
}

Outcome<Edit> annotate(const Reading& reading, BoundaryId id, std::string note) {
    return changed_boundary(reading, id, [&](Boundary& boundary) { boundary.note = std::move(note); });
}

} // namespace pithward
