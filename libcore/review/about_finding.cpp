#include "libcore/review/about_finding.h"

#include "libcore/edit/edit_log.h"
#include "libcore/edit/path_order.h"

#include <algorithm>
#include <utility>

namespace pithward::review {

namespace {

/// Where something lies on a path: its leg and the way along it, px.
using LegPlace = std::pair<std::size_t, double>;

LegPlace place_of(const Path& path, std::size_t leg, ImagePoint at) {
    Boundary here;
    here.leg = leg;
    here.at = at;
    return {leg, path_order(path, here).s_px};
}

bool settles(const Edit& edit, FindingId id) {
    if (const auto* group = std::get_if<EditGroup>(&edit.body)) {
        return std::ranges::any_of(group->edits, [id](const Edit& part) { return settles(part, id); });
    }
    const auto* changed = std::get_if<Changed<Finding>>(&edit.body);
    return changed != nullptr && changed->after.id == id && changed->after.state != changed->before.state;
}

} // namespace

std::vector<Candidate> candidates_about(const Reading& reading, const Finding& finding) {
    constexpr double same_px = 1.0; // a boundary this near is the one that the finding is about
    const auto place = [&](const auto& one) { return place_of(reading.path, one.leg, one.at); };
    const LegPlace from = place(finding);
    const LegPlace to = finding.to ? place_of(reading.path, finding.leg, *finding.to) : from;
    const LegPlace first = std::min(from, to);
    const LegPlace last = std::max(from, to);
    std::optional<LegPlace> outer;
    std::optional<LegPlace> inner;
    for (const Boundary& boundary : reading.boundaries) {
        const LegPlace here = place(boundary);
        if (boundary.id == finding.boundary) {
            continue;
        }
        if (here < LegPlace{first.first, first.second - same_px}) {
            outer = here; // boundaries stand in path order: the last one before it stays
        } else if (here > LegPlace{last.first, last.second + same_px} && !inner) {
            inner = here;
        }
    }
    std::vector<Candidate> about;
    for (const Candidate& candidate : reading.not_annual) {
        const LegPlace here = place(candidate);
        if ((!outer || here > *outer) && (!inner || here < *inner)) {
            about.push_back(candidate);
        }
    }
    return about;
}

std::optional<std::string> settled_by(std::span<const EditRecord> log, FindingId id) {
    const auto edits = edits_in_effect(log);
    const auto last = std::ranges::find_if(edits.rbegin(), edits.rend(),
                                           [id](const EditRecord* record) { return settles(record->edit, id); });
    return last == edits.rend() ? std::nullopt : std::optional((*last)->who);
}

} // namespace pithward::review
