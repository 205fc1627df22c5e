#include "libcore/pith/judge_pith.h"

#include <algorithm>
#include <utility>

namespace pithward {

Reading with_judgement(Reading reading, PithJudgement judgement, std::optional<std::int64_t> fresh) {
    const auto same = [](const Finding& one, const Finding& other) {
        return one.kind == other.kind && one.reason == other.reason && one.proposal == other.proposal;
    };
    std::erase_if(reading.findings, [&](const Finding& finding) {
        const bool still = std::ranges::any_of(judgement.findings, [&](const Finding& f) { return same(f, finding); });
        const bool answered =
            finding.state == Finding::State::KeptAsItIs || finding.state == Finding::State::ProposalTaken;
        return finding.kind == FindingKind::Pith && !answered && !still;
    });
    std::int64_t next = fresh.value_or(1);
    for (const Finding& finding : reading.findings) {
        next = std::max(next, finding.id.value + 1);
    }
    for (Finding& finding : judgement.findings) {
        // One that is there already, open or settled, is not raised again.
        if (std::ranges::none_of(reading.findings, [&](const Finding& known) { return same(known, finding); })) {
            finding.id = FindingId{next++};
            reading.findings.push_back(std::move(finding));
        }
    }
    reading.pith = std::move(judgement.pith);
    return reading;
}

Reading with_pith(Reading reading, const RingSeries& series, const PithKnowledge& knowledge, const Work& work) {
    PithJudgement judgement = judge_pith(reading, series, knowledge, work);
    return with_judgement(std::move(reading), std::move(judgement));
}

} // namespace pithward
