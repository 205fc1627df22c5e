#include "libcore/review/queue.h"

#include "libcore/edit/object_lists.h"

#include <algorithm>
#include <functional>

namespace pithward::review {

namespace {

using State = Reading::State;

/// The rings on the pith side of a place, and the one that it lies in.
double rings_inward(const Reading& reading, const Finding& finding) {
    Boundary here;
    here.leg = finding.leg;
    here.at = finding.at;
    const auto first = std::ranges::partition_point(
        reading.boundaries, [&](const Boundary& one) { return !stands_before(reading.path, here, one); });
    return 1.0 + static_cast<double>(reading.boundaries.end() - first);
}

double rings_touched(const Reading& reading, const Finding& finding) {
    switch (finding.kind) {
    case FindingKind::PossiblyFalse:
    case FindingKind::PossiblyOverlooked:
    case FindingKind::Doubtful:
    case FindingKind::LostWood:
    case FindingKind::Wedging:
    case FindingKind::Slip:
        return rings_inward(reading, finding);
    case FindingKind::BarkEnd:
    case FindingKind::OuterWood:
    case FindingKind::Scale:
        return 1.0 + static_cast<double>(reading.boundaries.size());
    case FindingKind::Pith:
    case FindingKind::PastPith:
    case FindingKind::Wood:
    case FindingKind::FieldSheet:
        return 1.0;
    }
    return 1.0;
}

bool is_open(const Finding& finding) {
    return finding.state == Finding::State::Open;
}

bool waits_for_supervisor(const Reading& reading, const Finding& finding) {
    return (reading.state == State::Marked && (finding.verdict == Verdict::None || is_open(finding))) ||
           (reading.state == State::Returned && finding.verdict == Verdict::None && !is_open(finding));
}

bool waits_for_analyst(const Reading& reading, const Finding& finding) {
    return (reading.state == State::Proposed || reading.state == State::Returned) && is_open(finding);
}

using Waits = bool (*)(const Reading&, const Finding&);

struct Entry {
    Waiting waiting;
    bool returned = false;
};

std::vector<Entry> entries(std::span<const Reading> readings, Waits waits) {
    std::vector<Entry> all;
    for (const Reading& reading : readings) {
        for (const Finding& finding : reading.findings) {
            if (waits(reading, finding)) {
                all.push_back(
                    {{reading.id, finding.id, rings_at_stake(reading, finding)}, finding.verdict == Verdict::Returned});
            }
        }
    }
    return all;
}

std::vector<Waiting> sorted(std::vector<Entry> all, bool returned_first) {
    std::ranges::stable_sort(all, [&](const Entry& a, const Entry& b) {
        if (returned_first && a.returned != b.returned) {
            return a.returned;
        }
        return a.waiting.rings_at_stake > b.waiting.rings_at_stake;
    });
    std::vector<Waiting> waiting;
    waiting.reserve(all.size());
    for (const Entry& entry : all) {
        waiting.push_back(entry.waiting);
    }
    return waiting;
}

} // namespace

double rings_at_stake(const Reading& reading, const Finding& finding) {
    const bool taken = finding.state == Finding::State::ProposalTaken;
    const double wrong = taken ? 1.0 - finding.probability : finding.probability;
    return wrong * rings_touched(reading, finding);
}

std::vector<Waiting> supervisors_queue(std::span<const Reading> readings) {
    return sorted(entries(readings, waits_for_supervisor), false);
}

std::vector<Waiting> analysts_list(std::span<const Reading> readings) {
    return sorted(entries(readings, waits_for_analyst), true);
}

} // namespace pithward::review
