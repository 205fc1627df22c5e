#include "tests/accuracy/read_cases.h"

#include "tests/accuracy/read_each.h"

namespace pithward::accuracy {

std::vector<CaseScore> read_cases(std::span<const Case> cases) {
    std::vector<CaseScore> scores(cases.size());
    read_each(cases, [&](std::size_t i, const Outcome<ReadCore>& core) {
        scores[i] = core ? case_score(cases[i].truth, core->reading, core->series) : unread(cases[i].truth);
    });
    return scores;
}

} // namespace pithward::accuracy
