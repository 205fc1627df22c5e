#include "libcore/edit/edits_between.h"
#include "libcore/edit/onto_path.h"
#include "libcore/edit/path_edits.h"
#include "libcore/edit/require_object.h"

namespace pithward {

Outcome<Edit> step_aside(const Reading& reading, BoundaryId at, ImagePoint to, BoundaryId fresh) {
    const auto found = require_object(reading.boundaries, at);
    if (!found) {
        return tl::unexpected(found.error());
    }
    const Boundary& boundary = found->get();
    const std::size_t leg = boundary.leg;
    const double reach = line_reach_px(reading);
    const auto foot = BoundaryLine(boundary.curve, boundary.at, boundary.tangent, reach).foot(to);
    const ImagePoint aside = foot.at - boundary.at;
    const double here = along_leg_px(reading.path.legs[leg], boundary.at);

    Reading after = reading;
    Leg& old_leg = after.path.legs[leg];
    Leg on{old_leg.scan, {foot.at}, JoinedAtBoundary{at, fresh}};
    std::erase_if(old_leg.points, [&](ImagePoint point) {
        const bool beyond = along_leg_px(reading.path.legs[leg], point) > here;
        if (beyond) {
            on.points.push_back(point + aside);
        }
        return beyond;
    });
    const auto next = find_object(reading.boundaries, at) + 1;
    if (on.points.size() < 2 || old_leg.points.empty() || next == reading.boundaries.end() || next->leg != leg) {
        return fail("", "the path does not go on beyond this boundary", "step aside at one with a ring inside it");
    }
    if (old_leg.points.back() != boundary.at) {
        old_leg.points.push_back(boundary.at);
    }
    if (old_leg.points.size() < 2) {
        return fail("", "the path begins at this boundary", "drag the end of the path there instead");
    }
    after.path.legs.insert(after.path.legs.begin() + static_cast<std::ptrdiff_t>(leg) + 1, on);

    const OntoPath onto(after.path, reach);
    const auto beyond = [&](std::size_t on_leg, ImagePoint place) {
        return on_leg > leg || (on_leg == leg && along_leg_px(reading.path.legs[leg], place) > here);
    };
    bool reached = true;
    const auto carry = [&](auto& line) {
        if (line.leg > leg) {
            ++line.leg;
        } else if (beyond(line.leg, line.at)) {
            reached = onto.put(line, leg + 1) && reached;
        }
    };
    std::ranges::for_each(after.boundaries, carry);
    std::ranges::for_each(after.not_annual, carry);
    const auto carry_foot = [&](auto& object, ImagePoint start) {
        if (object.leg > leg) {
            ++object.leg;
        } else if (beyond(object.leg, start)) {
            onto.put(object, leg + 1);
        }
    };
    for (Break& stretch : after.breaks) {
        carry_foot(stretch, stretch.from);
    }
    for (Finding& finding : after.findings) {
        carry_foot(finding, finding.at);
    }
    if (!reached) {
        return fail("", "a boundary further in would not be met from there", "step less far, or bend the path first");
    }
    Boundary second = boundary;
    second.id = fresh;
    second.leg = leg + 1;
    second.at = foot.at;
    const auto own = BoundaryLine(boundary.curve, boundary.at, boundary.tangent, reach).foot(boundary.at);
    second.tangent = line_direction(boundary.tangent + foot.tangent - own.tangent);
    after.boundaries.push_back(std::move(second));
    sort_along(after.boundaries, after.path);
    sort_along(after.not_annual, after.path);
    sort_along(after.breaks, after.path);
    return edits_between(reading, after, "Step aside along a ring boundary");
}

} // namespace pithward
