#include "libcore/review/verdicts.h"

#include "libcore/edit/reading_edits.h"
#include "libcore/edit/reading_head.h"
#include "libcore/edit/require_object.h"
#include "libcore/review/standing.h"

#include <algorithm>
#include <utility>

namespace pithward::review {

namespace {

using State = Reading::State;

Edit judged(const Finding& before, Verdict verdict, const std::string& comment) {
    Finding after = before;
    after.verdict = verdict;
    after.state = verdict == Verdict::Returned ? Finding::State::Open : before.state;
    after.comment = comment.empty() ? before.comment : comment;
    return {Changed<Finding>{before, std::move(after)}};
}

tl::unexpected<Fault> not_to_be_judged(const Reading& reading) {
    return fail("", "this reading is " + word(reading.state) + ", not marked",
                "its analyst says first that it is done");
}

} // namespace

Outcome<Edit> mark(const Reading& reading, const std::string& who) {
    if (reading.state == State::Marked || reading.state == State::Passed) {
        return fail("", "this reading is " + word(reading.state) + " already", "there is nothing to do");
    }
    ReadingHead after = head_of(reading);
    after.state = State::Marked;
    after.analyst = who;
    return change_head(reading, std::move(after));
}

Outcome<Edit> judge(const Reading& reading, FindingId id, Verdict verdict, const std::string& comment) {
    const auto found = require_object(reading.findings, id);
    if (!found) {
        return tl::unexpected(found.error());
    }
    const Finding& finding = *found;
    const bool returns = verdict == Verdict::Returned;
    if (reading.state == State::Proposed || (reading.state == State::Passed && !returns)) {
        return not_to_be_judged(reading);
    }
    if (verdict == Verdict::Passed && finding.state == Finding::State::Open) {
        return fail("", "this finding is open", "settle it, or return it");
    }
    EditGroup group{returns ? "Return a finding" : "Pass a finding", {judged(finding, verdict, comment)}};
    if (returns && reading.state != State::Returned) {
        group.edits.push_back(set_state(reading, State::Returned));
    }
    return Edit{std::move(group)};
}

std::optional<Fault> fault_of_own_work(const Reading& reading, std::span<const EditRecord> log,
                                       const std::string& who) {
    return standing(reading, log).marked_by == who
               ? std::optional(Fault{"", who + " marked this reading", "let somebody else pass it"})
               : std::nullopt;
}

Outcome<Edit> send_back(const Reading& reading) {
    if (reading.state != State::Marked && reading.state != State::Passed) {
        return not_to_be_judged(reading);
    }
    return set_state(reading, State::Returned);
}

Outcome<Edit> pass(const Reading& reading, std::span<const EditRecord> log, const std::string& who, OwnWork own_work) {
    if (reading.state != State::Marked) {
        return not_to_be_judged(reading);
    }
    const auto open =
        std::ranges::count_if(reading.findings, [](const Finding& one) { return one.state == Finding::State::Open; });
    if (open > 0) {
        return fail("", "findings of this reading are open: " + std::to_string(open), "settle or return them first");
    }
    if (auto own = fault_of_own_work(reading, log, who); own && own_work == OwnWork::Refused) {
        return tl::unexpected(std::move(*own));
    }
    EditGroup group{"Pass the reading", {}};
    for (const Finding& finding : reading.findings) {
        if (finding.verdict == Verdict::None) {
            group.edits.push_back(judged(finding, Verdict::Passed, ""));
        }
    }
    group.edits.push_back(set_state(reading, State::Passed));
    return Edit{std::move(group)};
}

} // namespace pithward::review
