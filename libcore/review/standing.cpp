#include "libcore/review/standing.h"

#include "libcore/edit/edit_log.h"

#include <algorithm>

namespace pithward::review {

namespace {

using State = Reading::State;

/// The state that an edit sets, if it sets one.
std::optional<State> state_set_by(const Edit& edit) {
    if (const auto* head = std::get_if<Changed<ReadingHead>>(&edit.body)) {
        const bool sets = head->before.state != head->after.state;
        return sets ? std::optional(head->after.state) : std::nullopt;
    }
    std::optional<State> state;
    if (const auto* group = std::get_if<EditGroup>(&edit.body)) {
        for (const Edit& part : group->edits) {
            const auto set = state_set_by(part);
            state = set ? set : state;
        }
    }
    return state;
}

/// Whether an edit changes what is measured, and not only what is said of it.
struct ChangesMeasurement {
    bool operator()(const EditGroup& group) const {
        return std::ranges::any_of(group.edits, [&](const Edit& part) { return std::visit(*this, part.body); });
    }
    bool operator()(const Changed<Boundary>& changed) const {
        Boundary as_before = changed.after;
        as_before.confirmation = changed.before.confirmation;
        as_before.note = changed.before.note;
        return !(as_before == changed.before);
    }
    bool operator()(const Changed<ReadingHead>& changed) const {
        ReadingHead as_before = changed.after;
        as_before.state = changed.before.state;
        as_before.analyst = changed.before.analyst;
        as_before.note = changed.before.note;
        return !(as_before == changed.before);
    }
    template <template <typename> typename Change>
    bool operator()(const Change<Candidate>& /*turned_down*/) const {
        return false;
    }
    template <template <typename> typename Change>
    bool operator()(const Change<Finding>& /*words*/) const {
        return false;
    }
    template <typename Body>
    bool operator()(const Body& /*body*/) const {
        return true;
    }
};

void count(Standing& standing, const Reading& reading) {
    standing.boundaries = static_cast<int>(reading.boundaries.size());
    for (const Boundary& boundary : reading.boundaries) {
        standing.looked_at += boundary.confirmation == Confirmation::LookedAt ? 1 : 0;
        standing.in_bulk += boundary.confirmation == Confirmation::InBulk ? 1 : 0;
    }
    standing.findings = static_cast<int>(reading.findings.size());
    for (const Finding& finding : reading.findings) {
        standing.open_findings += finding.state == Finding::State::Open ? 1 : 0;
    }
}

/// How far a state is on its way.
int rank(State state) {
    switch (state) {
    case State::Proposed:
        return 0;
    case State::Returned:
        return 1;
    case State::Marked:
        return 2;
    case State::Passed:
        return 3;
    }
    return 0;
}

} // namespace

Standing standing(const Reading& reading, std::span<const EditRecord> log) {
    Standing standing;
    standing.state = reading.state;
    count(standing, reading);
    const auto edits = edits_in_effect(log);
    for (const EditRecord* record : edits) {
        const auto state = state_set_by(record->edit);
        if (state == State::Marked) {
            standing.marked_by = record->who;
        } else if (state == State::Passed) {
            standing.passed_by = record->who;
        }
    }
    if (reading.state != State::Passed) {
        standing.passed_by.clear();
        return standing;
    }
    standing.passer_marked = standing.passed_by == standing.marked_by;
    standing.passer_changed = std::ranges::any_of(edits, [&](const EditRecord* record) {
        return record->who == standing.passed_by && std::visit(ChangesMeasurement{}, record->edit.body);
    });
    return standing;
}

Standing together(std::span<const Standing> all) {
    Standing sum;
    sum.state = all.empty() ? State::Proposed : State::Passed;
    for (const Standing& one : all) {
        sum.state = rank(one.state) < rank(sum.state) ? one.state : sum.state;
        sum.boundaries += one.boundaries;
        sum.looked_at += one.looked_at;
        sum.in_bulk += one.in_bulk;
        sum.findings += one.findings;
        sum.open_findings += one.open_findings;
    }
    return sum;
}

std::string told_looks(const Standing& standing) {
    std::string text = std::to_string(standing.looked_at);
    text += " looked at, ";
    text += std::to_string(standing.in_bulk);
    text += " confirmed in bulk, ";
    text += std::to_string(standing.boundaries - standing.looked_at - standing.in_bulk);
    text += " confirmed by nobody";
    return text;
}

std::string told_counts(const Standing& standing) {
    std::string text = std::to_string(standing.boundaries);
    text += " boundaries: ";
    return text + told_looks(standing);
}

std::string told_people(const Standing& standing) {
    if (standing.state == State::Passed) {
        std::string text = standing.passer_marked ? "" : "marked by " + standing.marked_by + ", ";
        text += "passed by ";
        text += standing.passed_by;
        text +=
            standing.passer_marked ? ", who marked it too" : (standing.passer_changed ? ", who changed it too" : "");
        return text;
    }
    std::string text = word(standing.state);
    if (standing.state == State::Proposed) {
        text += " by the program";
    } else if (!standing.marked_by.empty()) {
        text = (standing.state == State::Returned ? "returned to " : "marked by ") + standing.marked_by;
    }
    return text;
}

} // namespace pithward::review
