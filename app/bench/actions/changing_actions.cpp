#include "app/bench/actions/changing_actions.h"

#include <algorithm>
#include <array>

namespace pithward::bench {

bool changes_something(ActionId id) {
    using enum ActionId;
    static constexpr std::array changing{
        // Edits of the present reading.
        Undo, Redo, Confirm, ConfirmSure, AddBoundary, AddFreely, DeleteBoundary, TurnBoundaryLeft, TurnBoundaryRight,
        FalseRing, TakeCandidate, MarkAbsent, NotAbsent, MarkCrack, MarkLostWood, EditBreak, Note, TakeProposal,
        KeepAsItIs, CannotBeTold, SetYear, PlacePith, JudgePith,
        // The path and the scale, by which it is read anew.
        FindCores, DrawPath, SwapEnds, ExtendPath, BendPath, StraightenPath, StepAside, GoOnElsewhere, ReadRuler,
        // The project.
        MeasureAll, MarkDone, AcceptReading, PassQueued, ReturnQueued, CommentQueued};
    return std::ranges::find(changing, id) != changing.end();
}

} // namespace pithward::bench
