#pragma once

#include "libcore/specimen/boundary.h"
#include "libcore/specimen/break.h"
#include "libcore/specimen/units.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace pithward {

/// What a finding is about. A new kind is one value here and one line in the list of words (finding.cpp).
enum class FindingKind {
    PossiblyFalse,      ///< A boundary that may be an intra-annual band.
    PossiblyOverlooked, ///< A stretch that wants one more boundary.
    Doubtful,           ///< A boundary of low confidence for other reasons.
    OuterWood,          ///< The wood under the bark was judged, not told.
    BarkEnd,            ///< It is not sure which end is bark, or the wood contradicts what was given.
    LostWood,           ///< Whole rings may be gone at a break.
    Wedging,            ///< A ring that is on one side of the core only.
    Scale,              ///< The calibration is doubtful.
    Pith,               ///< The way to the pith could not be judged, or sources disagree.
    PastPith,           ///< The core may go past the pith, or a path may end at what is none.
    Wood,               ///< The kind of wood was judged and is not sure.
    FieldSheet,         ///< The field sheet tells something of the core, or does not go with it.
    Slip,               ///< The other cores of the site show a ring too many or too few.
};

/// What taking the proposal would change; nothing where the proposal is words only.
struct ProposeBoundary {
    Boundary boundary;
    friend bool operator==(const ProposeBoundary&, const ProposeBoundary&) = default;
};
struct ProposeRemoval {
    BoundaryId boundary;
    friend bool operator==(const ProposeRemoval&, const ProposeRemoval&) = default;
};
struct ProposeAbsentRing {
    BoundaryId at;
    friend bool operator==(const ProposeAbsentRing&, const ProposeAbsentRing&) = default;
};
struct ProposeBreak {
    Break stretch;
    friend bool operator==(const ProposeBreak&, const ProposeBreak&) = default;
};
using ProposedChange = std::variant<std::monostate, ProposeBoundary, ProposeRemoval, ProposeAbsentRing, ProposeBreak>;

/// What a second person says of how a finding was settled.
enum class Verdict { None, Passed, Returned };

/// A place that somebody should look at.
struct Finding {
    enum class State { Open, ProposalTaken, KeptAsItIs, CannotBeTold };

    FindingId id;
    FindingKind kind = FindingKind::Doubtful;
    std::size_t leg = 0;
    ImagePoint at;                      ///< Where it starts, on the path.
    std::optional<ImagePoint> to;       ///< Where it ends, when it covers a stretch.
    std::optional<BoundaryId> boundary; ///< The boundary it is about, if it is about one.
    std::string reason;
    std::string proposal;
    ProposedChange change;
    double probability = 0.5; ///< That the proposal is right.
    State state = State::Open;
    std::string comment;
    Verdict verdict = Verdict::None; ///< None again once the finding is settled anew.
    friend bool operator==(const Finding&, const Finding&) = default;
};

/// "possibly-false", "possibly-overlooked", "doubtful", "outer-wood", "bark-end", "lost-wood", "wedging", "scale",
/// "pith", "past-pith", "wood", "field-sheet",
/// "slip".
[[nodiscard]] std::string word(FindingKind kind);
[[nodiscard]] std::optional<FindingKind> finding_kind_from(std::string_view word);
/// "open", "proposal taken", "kept as it is", "can't be told".
[[nodiscard]] std::string word(Finding::State state);
/// "none", "passed", "returned".
[[nodiscard]] std::string word(Verdict verdict);

} // namespace pithward
