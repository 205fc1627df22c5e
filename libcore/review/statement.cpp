#include "libcore/review/statement.h"

#include <map>

namespace pithward::review {

namespace {

using State = Reading::State;

/// "Ida 2, Udo 1"
std::string listed(const std::map<std::string, int>& counts) {
    std::string text;
    for (const auto& [name, count] : counts) {
        text += text.empty() ? "" : ", ";
        text += name;
        text += ' ';
        text += std::to_string(count);
    }
    return text;
}

std::string boundaries_line(const Standing& all) {
    std::string text = "Boundaries: ";
    text += std::to_string(all.boundaries);
    text += ", of which ";
    text += told_looks(all);
    text += "; findings open: ";
    return text + std::to_string(all.open_findings);
}

} // namespace

std::vector<std::string> statement(std::span<const Standing> readings) {
    std::map<State, int> states;
    std::map<std::string, int> passers;
    std::map<std::string, int> markers;
    int own_work = 0;
    for (const Standing& one : readings) {
        ++states[one.state];
        if (!one.marked_by.empty()) {
            ++markers[one.marked_by];
        }
        if (one.state == State::Passed) {
            ++passers[one.passed_by];
            own_work += one.passer_marked || one.passer_changed ? 1 : 0;
        }
    }
    std::string people = "Readings: " + std::to_string(readings.size()) + ", of which ";
    const char* between = "";
    for (const State state : {State::Passed, State::Marked, State::Returned, State::Proposed}) {
        people += between;
        people += std::to_string(states[state]);
        people += ' ';
        people += word(state);
        between = ", ";
    }
    people += markers.empty() ? "; marked by nobody" : "; marked by " + listed(markers);
    people += passers.empty() ? "; passed by nobody" : "; passed by " + listed(passers);
    if (own_work > 0) {
        people += "; marked or changed by the same person who passed them: ";
        people += std::to_string(own_work);
    }
    return {boundaries_line(together(readings)), std::move(people)};
}

} // namespace pithward::review
