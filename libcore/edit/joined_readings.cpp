#include "libcore/edit/joined_readings.h"

#include "libcore/edit/apply.h"
#include "libcore/edit/edits_between.h"
#include "libcore/edit/object_lists.h"
#include "libcore/edit/onto_path.h"
#include "libcore/edit/path_order.h"

#include <algorithm>
#include <set>

namespace pithward {

namespace {

/// A place on a path, to tell what lies on either side of it.
struct Place {
    std::size_t leg = 0;
    double s_px = 0.0;
    friend auto operator<=>(const Place&, const Place&) = default;
};

Place place_on(const Path& path, std::size_t leg, ImagePoint at) {
    return {leg, along_leg_px(path.legs[leg], at)};
}

ImagePoint start_of(const Boundary& boundary) {
    return boundary.at;
}
ImagePoint start_of(const Candidate& candidate) {
    return candidate.at;
}
ImagePoint start_of(const Break& stretch) {
    return stretch.from;
}
ImagePoint start_of(const Finding& finding) {
    return finding.at;
}

/// Keeps what `keeps` says of each place, and what hangs on what is kept.
template <typename Keeps>
void keep_only(Reading& reading, const Keeps& keeps) {
    const Path path = reading.path;
    const auto gone = [&](const auto& object) { return !keeps(place_on(path, object.leg, start_of(object))); };
    std::erase_if(reading.boundaries, gone);
    std::erase_if(reading.not_annual, gone);
    std::erase_if(reading.breaks, gone);
    std::set<BoundaryId> there;
    for (const Boundary& boundary : reading.boundaries) {
        there.insert(boundary.id);
    }
    std::erase_if(reading.absent_rings, [&](const AbsentRing& ring) { return !there.contains(ring.at); });
    std::erase_if(reading.findings, [&](const Finding& finding) {
        return gone(finding) || (finding.boundary && !there.contains(*finding.boundary));
    });
}

/// Ends the path at a boundary.
void end_at(Reading& reading, const Boundary& boundary) {
    const Place end = place_on(reading.path, boundary.leg, boundary.at);
    keep_only(reading, [&](Place place) { return place <= end; });
    reading.path.legs.resize(boundary.leg + 1);
    Leg& leg = reading.path.legs.back();
    const Leg whole = leg;
    std::erase_if(leg.points, [&](ImagePoint point) { return along_leg_px(whole, point) >= end.s_px; });
    leg.points.push_back(boundary.at);
}

/// Lets the path begin at a boundary.
void begin_at(Reading& reading, const Boundary& boundary) {
    const Place start = place_on(reading.path, boundary.leg, boundary.at);
    keep_only(reading, [&](Place place) { return place >= start; });
    auto& legs = reading.path.legs;
    legs.erase(legs.begin(), legs.begin() + static_cast<std::ptrdiff_t>(boundary.leg));
    const Leg whole = legs.front();
    std::erase_if(legs.front().points, [&](ImagePoint point) { return along_leg_px(whole, point) <= start.s_px; });
    legs.front().points.insert(legs.front().points.begin(), boundary.at);
    const std::size_t gone = boundary.leg;
    for_each_list(reading, [gone](auto& list) {
        for (auto& object : list) {
            if constexpr (requires { object.leg; }) {
                object.leg -= gone;
            }
        }
    });
}

/// Other numbers for all objects, and for what names them; legs after others of another path.
void move_behind(Reading& reading, std::int64_t by, std::size_t legs) {
    const auto renumber = [by](auto& id) { id.value += by; };
    for_each_list(reading, [&](auto& list) {
        for (auto& object : list) {
            renumber(object.id);
            if constexpr (requires { object.leg; }) {
                object.leg += legs;
            }
        }
    });
    for (AbsentRing& ring : reading.absent_rings) {
        renumber(ring.at);
    }
    for (Finding& finding : reading.findings) {
        if (finding.boundary) {
            renumber(*finding.boundary);
        }
        if (auto* added = std::get_if<ProposeBoundary>(&finding.change)) {
            added->boundary.leg += legs;
        } else if (auto* removed = std::get_if<ProposeRemoval>(&finding.change)) {
            renumber(removed->boundary);
        } else if (auto* absent = std::get_if<ProposeAbsentRing>(&finding.change)) {
            renumber(absent->at);
        } else if (auto* stretch = std::get_if<ProposeBreak>(&finding.change)) {
            stretch->stretch.leg += legs;
        }
    }
    for (Leg& leg : reading.path.legs) {
        if (auto* at = std::get_if<JoinedAtBoundary>(&leg.joined_by)) {
            renumber(at->on_previous);
            renumber(at->on_this);
        } else if (auto* gap = std::get_if<JoinedAtBreak>(&leg.joined_by)) {
            renumber(gap->at);
        }
    }
}

/// Findings that are about the end of a path, which is none any more.
void drop_findings(Reading& reading, std::initializer_list<FindingKind> kinds) {
    std::erase_if(reading.findings,
                  [&](const Finding& finding) { return std::ranges::find(kinds, finding.kind) != kinds.end(); });
}

template <typename T>
void append(std::vector<T>& to, const std::vector<T>& more) {
    to.insert(to.end(), more.begin(), more.end());
}

/// Ends `outer` and begins `inner` where they meet; answers with how the first leg of `inner` follows, in the numbers
/// that it will have.
Outcome<Join> meet(Reading& outer, Reading& inner, const MeetAtBoundary& at, std::int64_t fresh) {
    const auto last = find_object(outer.boundaries, at.on_outer);
    const auto first = find_object(inner.boundaries, at.on_inner);
    if (last == outer.boundaries.end() || first == inner.boundaries.end()) {
        return fail("", "the boundary that both show is not there any more", "choose another one");
    }
    if (last == outer.boundaries.begin() || first + 1 == inner.boundaries.end()) {
        return fail("", "no ring would be left on one of the scans",
                    "choose a boundary with a ring outside it here and one inside it there");
    }
    end_at(outer, Boundary(*last));
    begin_at(inner, Boundary(*first));
    return JoinedAtBoundary{at.on_outer, BoundaryId{at.on_inner.value + fresh}};
}

Outcome<Join> meet(Reading& outer, Reading& /*inner*/, const MeetAtBreak& at, std::int64_t fresh) {
    Break gap;
    gap.id = BreakId{fresh};
    gap.leg = outer.path.legs.size() - 1;
    gap.from = gap.to = outer.path.legs.back().points.back();
    gap.kind = at.kind;
    gap.rings_lost = at.rings_lost;
    outer.breaks.push_back(gap);
    return JoinedAtBreak{gap.id};
}

} // namespace

Outcome<Reading> joined_readings(Reading outer, Reading inner, const Meeting& meeting, std::int64_t fresh) {
    if (outer.wood != inner.wood) {
        return fail("", "the two are read as different kinds of wood", "choose the same one for both first");
    }
    if (outer.boundaries.empty() || inner.boundaries.empty()) {
        return fail("", "one of the two has no ring boundary", "read it first");
    }
    const auto join = std::visit([&](const auto& at) { return meet(outer, inner, at, fresh); }, meeting);
    if (!join) {
        return tl::unexpected(join.error());
    }
    drop_findings(outer, {FindingKind::Pith, FindingKind::PastPith});
    drop_findings(inner, {FindingKind::OuterWood, FindingKind::BarkEnd, FindingKind::FieldSheet});
    move_behind(inner, fresh, outer.path.legs.size());
    inner.path.legs.front().joined_by = *join;
    append(outer.path.legs, inner.path.legs);
    append(outer.boundaries, inner.boundaries);
    append(outer.not_annual, inner.not_annual);
    append(outer.breaks, inner.breaks);
    append(outer.absent_rings, inner.absent_rings);
    append(outer.findings, inner.findings);
    outer.calibrations.insert(inner.calibrations.begin(), inner.calibrations.end());
    outer.pith = inner.pith;
    if (auto fault = fault_of_links(outer)) {
        return tl::unexpected(std::move(*fault));
    }
    return outer;
}

Outcome<Edit> go_on_with(const Reading& outer, const Reading& inner, const Meeting& meeting, std::int64_t fresh) {
    return joined_readings(outer, inner, meeting, fresh).map([&](const Reading& joined) {
        return edits_between(outer, joined, "Go on on another scan");
    });
}

} // namespace pithward
