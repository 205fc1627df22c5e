#include "libcore/specimen/finding.h"

#include <algorithm>
#include <array>
#include <utility>

namespace pithward {

namespace {

using KindWord = std::pair<FindingKind, const char*>;
constexpr std::array kind_words{
    KindWord{FindingKind::PossiblyFalse, "possibly-false"},
    KindWord{FindingKind::PossiblyOverlooked, "possibly-overlooked"},
    KindWord{FindingKind::Doubtful, "doubtful"},
    KindWord{FindingKind::OuterWood, "outer-wood"},
    KindWord{FindingKind::BarkEnd, "bark-end"},
    KindWord{FindingKind::LostWood, "lost-wood"},
    KindWord{FindingKind::Wedging, "wedging"},
    KindWord{FindingKind::Scale, "scale"},
    KindWord{FindingKind::Pith, "pith"},
    KindWord{FindingKind::PastPith, "past-pith"},
    KindWord{FindingKind::Wood, "wood"},
    KindWord{FindingKind::FieldSheet, "field-sheet"},
    KindWord{FindingKind::Slip, "slip"},
};

} // namespace

std::string word(FindingKind kind) {
    const auto* found = std::ranges::find(kind_words, kind, &KindWord::first);
    return found == kind_words.end() ? "doubtful" : found->second;
}

std::optional<FindingKind> finding_kind_from(std::string_view text) {
    const auto* found = std::ranges::find_if(kind_words, [&](const KindWord& entry) { return text == entry.second; });
    return found == kind_words.end() ? std::nullopt : std::optional(found->first);
}

std::string word(Finding::State state) {
    switch (state) {
    case Finding::State::Open:
        return "open";
    case Finding::State::ProposalTaken:
        return "proposal taken";
    case Finding::State::KeptAsItIs:
        return "kept as it is";
    case Finding::State::CannotBeTold:
        return "can't be told";
    }
    return "open";
}

std::string word(Verdict verdict) {
    switch (verdict) {
    case Verdict::None:
        return "none";
    case Verdict::Passed:
        return "passed";
    case Verdict::Returned:
        return "returned";
    }
    return "none";
}

} // namespace pithward
