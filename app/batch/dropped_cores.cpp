#include "app/batch/dropped_cores.h"

#include <algorithm>

namespace pithward::batch {

namespace {

std::string listed(const std::vector<std::size_t>& numbers) {
    constexpr std::size_t most = 12;
    std::string text;
    for (std::size_t i = 0; i < numbers.size() && i < most; ++i) {
        text += (i == 0 ? "" : ", ") + std::to_string(numbers[i]);
    }
    return numbers.size() > most ? text + ", ..." : text;
}

} // namespace

void DroppedCores::add(std::size_t index, const Fault& fault) {
    auto kind = std::ranges::find_if(kinds_, [&](const Kind& one) { return one.fault.what == fault.what; });
    if (kind == kinds_.end()) {
        kind = kinds_.insert(kinds_.end(), Kind{fault, {}});
    }
    kind->numbers.push_back(index + 1);
}

std::vector<Fault> DroppedCores::by_kind() const {
    std::vector<Fault> faults;
    for (const Kind& kind : kinds_) {
        const std::string cores = kind.numbers.size() == 1 ? "core " : "cores ";
        faults.push_back({scan_,
                          cores + listed(kind.numbers) + " of " + std::to_string(found_) +
                              " could not be measured: " + kind.fault.what,
                          kind.fault.remedy});
    }
    return faults;
}

Fault DroppedCores::all() const {
    if (found_ == 1 && !kinds_.empty()) {
        return kinds_.front().fault;
    }
    std::string reasons;
    for (const Kind& kind : kinds_) {
        reasons += (reasons.empty() ? "" : "; ") + kind.fault.what + " (" + std::to_string(kind.numbers.size()) + ")";
    }
    return {scan_, "none of the " + std::to_string(found_) + " cores found could be measured: " + reasons,
            "draw a path with --path \"x,y x,y ...\""};
}

} // namespace pithward::batch
