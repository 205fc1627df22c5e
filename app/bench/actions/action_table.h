#pragma once

#include <QString>
#include <span>

namespace pithward::bench {

enum class ActionId {
    Open,
    OpenProject,
    NewProject,
    SettleScans,
    MeasureAll,
    WriteReport,
    WritePackage,
    ShowHandbook,
    SayWho,
    ExportCsv,
    ExportDecadal,
    ExportJson,
    ExportPicture,
    Quit,
    FindCores,
    DrawPath,
    SwapEnds,
    ExtendPath,
    BendPath,
    StraightenPath,
    StepAside,
    GoOnElsewhere,
    PlacePith,
    JudgePith,
    ReadRuler,
    ShowScale,
    SetYear,
    NextFinding,
    PreviousFinding,
    NextCore,
    PreviousCore,
    NextScan,
    PreviousScan,
    Cancel,
    Undo,
    Redo,
    Confirm,
    ConfirmSure,
    NextBoundary,
    PreviousBoundary,
    AddBoundary,
    AddFreely,
    DeleteBoundary,
    TurnBoundaryLeft,
    TurnBoundaryRight,
    FalseRing,
    TakeCandidate,
    MarkAbsent,
    NotAbsent,
    MarkCrack,
    MarkLostWood,
    EditBreak,
    Note,
    TakeProposal,
    KeepAsItIs,
    CannotBeTold,
    ZoomIn,
    ZoomOut,
    ShowAll,
    ShowPixels,
    GoToBark,
    GoToPith,
    TurnLeft,
    TurnRight,
    LevelCore,
    ShowDetails,
    FoldPanel,
    ColoursSystem,
    ColoursLight,
    ColoursDark,
    Keys,
    OpenDemo,
    MarkDone,
    AcceptReading,
    NextToDo,
    ShowBench,
    ShowReview,
    ShowSite,
    ShowProgress,
    ShowHistory,
    CompareReadings,
    PassQueued,
    ReturnQueued,
    CommentQueued,
    OpenQueued,
    OtherQueue,
};

/// What has to be there for an action to make sense.
enum class Needs {
    Nothing,
    Scan,
    Scale,
    Core,
    Boundary,
    Finding,
    Undo,
    Redo,
    Work,
    View,
    Picture,
    Project,
    Recorded,
    Queue,
    Place
};

enum class Menu { File, Edit, Core, Review, View, Colours, Help };

/// One line of the table of actions: menus, tool bar, tool tips and the sheet of keys are made from it.
struct ActionSpec {
    ActionId id;
    Menu menu;
    const char* text; ///< With & for its letter; to be translated in the context "Actions".
    const char* help; ///< One sentence.
    const char* icon; ///< Name of a drawing in resources/icons; empty for none.
    const char* keys; ///< Default keys, as QKeySequence reads them; several divided by a blank.
    Needs needs;
    bool in_tool_bar;
    bool opens_group; ///< A line is drawn above it in its menu.
};

[[nodiscard]] std::span<const ActionSpec> action_table();

/// What is on the bench, as far as actions ask for it.
struct BenchState {
    bool scan = false;
    bool scale = false;
    bool core = false;
    bool boundary = false; ///< One is in hand.
    bool finding = false;
    bool undo = false;
    bool redo = false;
    bool work = false;
    bool view = false;      ///< Something is shown that can be come closer to.
    bool project = false;   ///< One is open.
    bool recorded = false;  ///< The present core is one of the project.
    bool queue = false;     ///< The review is shown, and something waits.
    bool picture = false;   ///< Years are shown that can be come closer to.
    bool place = false;     ///< Something is shown that has a place on the bench.
    bool only_seen = false; ///< What is shown may be looked at, not changed.
};
[[nodiscard]] bool enabled(Needs needs, const BenchState& state);

/// Translated text of a line.
[[nodiscard]] QString text_of(const ActionSpec& spec);
[[nodiscard]] QString help_of(const ActionSpec& spec);
[[nodiscard]] QString title_of(Menu menu);

} // namespace pithward::bench
