#include "libcore/progress/core_progress.h"

#include <algorithm>

namespace pithward::progress {

namespace {

using State = Reading::State;
using Kind = Objection::Kind;

int unconfirmed(const ReadingFacts& reading) {
    return std::max(0, reading.boundaries - reading.confirmed);
}

/// Whether its analyst still works on it.
bool with_analyst(const ReadingFacts& reading) {
    return reading.state == State::Proposed || reading.state == State::Returned;
}

HowFar scanned(const CoreFacts& facts) {
    if (!facts.scan_named) {
        return HowFar::NotYet;
    }
    return facts.scan_there ? HowFar::Done : HowFar::WantsLook;
}

HowFar confirmed(const ReadingFacts& reading) {
    if (reading.open_findings > 0) {
        return HowFar::WantsLook;
    }
    if (unconfirmed(reading) == 0) {
        return HowFar::Done;
    }
    return reading.confirmed > 0 ? HowFar::Partly : HowFar::NotYet;
}

HowFar dated(const CoreFacts& facts) {
    if (!facts.has_years) {
        return facts.dating && facts.dating->can_be_dated ? HowFar::WantsLook : HowFar::NotYet;
    }
    if (!facts.dating) {
        return HowFar::Partly;
    }
    return facts.dating->slips > 0 || facts.dating->shift != 0 ? HowFar::WantsLook : HowFar::Done;
}

HowFar reviewed(State state) {
    switch (state) {
    case State::Proposed:
        return HowFar::NotYet;
    case State::Marked:
        return HowFar::Partly;
    case State::Passed:
        return HowFar::Done;
    case State::Returned:
        return HowFar::WantsLook;
    }
    return HowFar::NotYet;
}

std::vector<Objection> objections(const CoreFacts& facts) {
    std::vector<Objection> against;
    const auto add = [&](bool there, Kind kind, int count) {
        if (there) {
            against.push_back({kind, count});
        }
    };
    add(!facts.scan_named, Kind::NoScan, 0);
    add(facts.scan_named && !facts.scan_there, Kind::ScanGone, 0);
    if (const auto& reading = facts.reading) {
        add(reading->state == State::Returned, Kind::Returned, 0);
        add(reading->open_findings > 0, Kind::OpenFinding, reading->open_findings);
        const DatingFacts dating = facts.dating.value_or(DatingFacts{});
        add(dating.slips > 0, Kind::Slip, dating.slips);
        add(dating.shift != 0, Kind::Shift, dating.shift);
        add(!facts.has_years, Kind::NoYears, 0);
        add(unconfirmed(*reading) > 0, Kind::Unconfirmed, unconfirmed(*reading));
    }
    return against;
}

Step next_step(const CoreFacts& facts) {
    if (!facts.reading) {
        return facts.scan_named && facts.scan_there ? Step::Measure : Step::FindScan;
    }
    const ReadingFacts& reading = *facts.reading;
    if (with_analyst(reading) && reading.open_findings > 0) {
        return Step::Settle;
    }
    if (with_analyst(reading) && unconfirmed(reading) > 0) {
        return Step::Confirm;
    }
    if (dated(facts) == HowFar::WantsLook) {
        return Step::Date;
    }
    if (with_analyst(reading)) {
        return Step::SayDone;
    }
    return reading.state == State::Marked ? Step::Review : Step::Report;
}

constexpr std::array site_order{Step::Measure, Step::Settle, Step::Confirm, Step::Date,
                                Step::SayDone, Step::Review, Step::Report,  Step::FindScan};

} // namespace

CoreProgress core_progress(const CoreFacts& facts) {
    CoreProgress progress;
    const auto set = [&](Stage stage, HowFar how) { progress.stages[static_cast<std::size_t>(stage)] = how; };
    set(Stage::Scanned, scanned(facts));
    if (facts.reading) {
        set(Stage::Measured, HowFar::Done);
        set(Stage::Confirmed, confirmed(*facts.reading));
        set(Stage::Dated, dated(facts));
        set(Stage::Reviewed, reviewed(facts.reading->state));
    }
    progress.next = next_step(facts);
    progress.against = objections(facts);
    return progress;
}

SiteProgress site_progress(std::span<const CoreProgress> cores) {
    SiteProgress site;
    site.cores = static_cast<int>(cores.size());
    for (const CoreProgress& core : cores) {
        for (const Stage stage : all_stages) {
            site.done[static_cast<std::size_t>(stage)] += core.at(stage) == HowFar::Done ? 1 : 0;
        }
    }
    for (const Step step : site_order) {
        const auto first = std::ranges::find(cores, step, &CoreProgress::next);
        if (first != cores.end()) {
            site.next = step;
            site.waiting = static_cast<int>(std::ranges::count(cores, step, &CoreProgress::next));
            site.first = static_cast<std::size_t>(first - cores.begin());
            break;
        }
    }
    return site;
}

Reading::State state_of(std::string_view word) {
    for (const State state : {State::Marked, State::Passed, State::Returned}) {
        if (word == pithward::word(state)) {
            return state;
        }
    }
    return State::Proposed;
}

std::string word(Step step) {
    switch (step) {
    case Step::FindScan:
        return "find its scan";
    case Step::Measure:
        return "measure";
    case Step::Settle:
        return "settle findings";
    case Step::Confirm:
        return "confirm boundaries";
    case Step::Date:
        return "date";
    case Step::SayDone:
        return "say that it is done";
    case Step::Review:
        return "review";
    case Step::Report:
        return "report";
    }
    return {};
}

} // namespace pithward::progress
