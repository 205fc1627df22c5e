#include "app/bench/actions/action_table.h"

#include <QCoreApplication>
#include <array>

namespace pithward::bench {

namespace {

// Short names for the table's columns.
constexpr bool in_bar = true;
constexpr bool not_in_bar = false;
constexpr bool new_group = true;
constexpr bool same_group = false;

} // namespace

std::span<const ActionSpec> action_table() {
    using enum ActionId;
    static constexpr std::array table{
        ActionSpec{Open, Menu::File, "&Open scan…", "Open scans or add them to the bench.", "open", "Ctrl+O",
                   Needs::Nothing, in_bar, same_group},
        ActionSpec{OpenProject, Menu::File, "Open &project…", "Open a project: its cores, readings and their history.",
                   "", "Ctrl+Shift+O", Needs::Nothing, not_in_bar, same_group},
        ActionSpec{SayWho, Menu::File, "&Who works here…",
                   "Say who works at this window: each edit of a project tells it.", "", "Ctrl+U", Needs::Nothing,
                   not_in_bar, same_group},
        ActionSpec{ExportCsv, Menu::File, "Export &CSV…", "Write the ring widths as a table, years down.", "", "Ctrl+E",
                   Needs::Core, not_in_bar, new_group},
        ActionSpec{ExportDecadal, Menu::File, "Export &decadal file…",
                   "Write the ring widths as a decadal file, as dating programs read it.", "", "Ctrl+D", Needs::Core,
                   not_in_bar, same_group},
        ActionSpec{ExportJson, Menu::File, "Export &JSON…", "Write everything that was read, with its uncertainty.", "",
                   "Ctrl+J", Needs::Core, not_in_bar, same_group},
        ActionSpec{ExportPicture, Menu::File, "Export &picture…", "Write a picture of the scan with its boundaries.",
                   "", "Ctrl+P", Needs::Core, not_in_bar, same_group},
        ActionSpec{Quit, Menu::File, "&Quit", "Close the window.", "", "Ctrl+Q", Needs::Nothing, not_in_bar, new_group},

        ActionSpec{Undo, Menu::Edit, "&Undo", "Take the last change back.", "undo", "Ctrl+Z", Needs::Undo, in_bar,
                   same_group},
        ActionSpec{Redo, Menu::Edit, "&Redo", "Do again what was taken back.", "redo", "Ctrl+Shift+Z Ctrl+Y",
                   Needs::Redo, in_bar, same_group},
        ActionSpec{Confirm, Menu::Edit, "&Confirm and go on", "Confirm the boundary in hand and take up the next one.",
                   "confirm", "C", Needs::Core, in_bar, new_group},
        ActionSpec{ConfirmSure, Menu::Edit, "Confirm all &sure ones",
                   "Confirm every boundary with a whole line; it is recorded as done in bulk.", "confirm-all",
                   "Shift+C", Needs::Core, in_bar, same_group},
        ActionSpec{NextBoundary, Menu::Edit, "Ne&xt boundary", "Take up the next boundary toward the pith.", "", ".",
                   Needs::Core, not_in_bar, same_group},
        ActionSpec{PreviousBoundary, Menu::Edit, "Pre&vious boundary", "Take up the next boundary toward the bark.", "",
                   ",", Needs::Core, not_in_bar, same_group},
        ActionSpec{AddBoundary, Menu::Edit, "&Add boundary here",
                   "Add the boundary that the wood shows near the cursor.", "", "A", Needs::Core, not_in_bar,
                   new_group},
        ActionSpec{AddFreely, Menu::Edit, "Add boundary &freely",
                   "Add a boundary at the cursor, whatever the wood shows.", "", "Shift+A", Needs::Core, not_in_bar,
                   same_group},
        ActionSpec{DeleteBoundary, Menu::Edit, "&Delete boundary", "Delete the boundary in hand.", "", "Del Backspace",
                   Needs::Boundary, not_in_bar, same_group},
        ActionSpec{TurnBoundaryLeft, Menu::Edit, "Turn &left", "Turn the boundary in hand one degree to the left.", "",
                   "[", Needs::Boundary, not_in_bar, same_group},
        ActionSpec{TurnBoundaryRight, Menu::Edit, "Turn r&ight", "Turn the boundary in hand one degree to the right.",
                   "", "]", Needs::Boundary, not_in_bar, same_group},
        ActionSpec{FalseRing, Menu::Edit, "Fals&e ring", "The boundary in hand is no year's end: turn it down.", "",
                   "F", Needs::Boundary, not_in_bar, new_group},
        ActionSpec{TakeCandidate, Menu::Edit, "&Take what was turned down",
                   "Take the candidate under the cursor as a boundary.", "", "Shift+F", Needs::Core, not_in_bar,
                   same_group},
        ActionSpec{MarkAbsent, Menu::Edit, "Locally a&bsent ring",
                   "Mark a year of width 0 at the boundary in hand, just outside the ring that it closes.", "", "L",
                   Needs::Boundary, not_in_bar, same_group},
        ActionSpec{NotAbsent, Menu::Edit, "N&o absent ring", "Take away the absent ring at the boundary in hand.", "",
                   "Shift+L", Needs::Boundary, not_in_bar, same_group},
        ActionSpec{MarkCrack, Menu::Edit, "Crac&k…", "Click the two edges of a crack: its breadth is no wood.", "", "B",
                   Needs::Core, not_in_bar, same_group},
        ActionSpec{MarkLostWood, Menu::Edit, "Lost &wood…",
                   "Click the two edges of a stretch where wood is lost: its rings get no width.", "", "Shift+B",
                   Needs::Core, not_in_bar, same_group},
        ActionSpec{EditBreak, Menu::Edit, "Change brea&k…",
                   "Say what the break under the cursor is and how many rings are gone, or remove it.", "", "X",
                   Needs::Core, not_in_bar, same_group},
        ActionSpec{Note, Menu::Edit, "&Note…", "Write a note on the boundary in hand.", "", "M", Needs::Boundary,
                   not_in_bar, same_group},
        ActionSpec{TakeProposal, Menu::Edit, "Take the &proposal", "Do what the finding proposes, and go to the next.",
                   "take", "T", Needs::Finding, in_bar, new_group},
        ActionSpec{KeepAsItIs, Menu::Edit, "Keep as it is", "Leave it as it is, looked at, and go to the next.", "keep",
                   "K", Needs::Finding, in_bar, same_group},
        ActionSpec{CannotBeTold, Menu::Edit, "Can't be told", "Nobody can tell on this core; go to the next.", "", "U",
                   Needs::Finding, not_in_bar, same_group},

        ActionSpec{FindCores, Menu::Core, "&Find cores", "Look for cores again; readings of this scan are replaced.",
                   "find", "Ctrl+F", Needs::Scale, not_in_bar, same_group},
        ActionSpec{DrawPath, Menu::Core, "&Draw path", "Click a path from bark to pith and measure along it.", "path",
                   "P", Needs::Scale, in_bar, same_group},
        ActionSpec{SwapEnds, Menu::Core, "S&wap bark and pith", "Read the core again from its other end.", "swap", "R",
                   Needs::Core, in_bar, same_group},
        ActionSpec{ExtendPath, Menu::Core, "&Extend path to here",
                   "Let the path go on to the cursor from its nearer end, and read what is new.", "", "E", Needs::Core,
                   not_in_bar, same_group},
        ActionSpec{BendPath, Menu::Core, "&Bend path here",
                   "Put a bend into the path at the cursor, to be dragged; Ctrl and a drag do both.", "", "V",
                   Needs::Core, not_in_bar, same_group},
        ActionSpec{StraightenPath, Menu::Core, "Take bend &away", "Take away the bend under the cursor.", "", "Shift+V",
                   Needs::Core, not_in_bar, same_group},
        ActionSpec{StepAside, Menu::Core, "Step &aside along boundary",
                   "Let the path step along the boundary in hand to the cursor's side and go on from there.", "", "S",
                   Needs::Boundary, not_in_bar, same_group},
        ActionSpec{PlacePith, Menu::Core, "P&ith here",
                   "Put the pith at the cursor; its mark and the arc beside the innermost ring can be dragged too.", "",
                   "Z", Needs::Core, not_in_bar, same_group},
        ActionSpec{JudgePith, Menu::Core, "Pith by the rin&gs",
                   "Judge the pith by the curve of the rings again, where it was placed by hand.", "", "Shift+Z",
                   Needs::Core, not_in_bar, same_group},
        ActionSpec{SetYear, Menu::Core, "Set &year…", "Type the year of the outermost ring.", "", "Y", Needs::Core,
                   not_in_bar, same_group},
        ActionSpec{ReadRuler, Menu::Core, "Scale by a &ruler…",
                   "Click a line along the marks of a ruler on the scan, to read the scale from it.", "", "D",
                   Needs::Scan, not_in_bar, same_group},
        ActionSpec{ShowScale, Menu::Core, "Sca&le…", "Who says what of the scan's scale, and which one is used.", "",
                   "Shift+D", Needs::Scan, not_in_bar, same_group},
        ActionSpec{NextFinding, Menu::Core, "&Next finding", "Go to the next place that wants a look.", "next", "N",
                   Needs::Finding, in_bar, new_group},
        ActionSpec{PreviousFinding, Menu::Core, "&Previous finding", "Go to the place before.", "previous", "Shift+N",
                   Needs::Finding, in_bar, same_group},
        ActionSpec{NextCore, Menu::Core, "Next co&re", "Turn to the next core of this scan.", "", "PgDown", Needs::Core,
                   not_in_bar, new_group},
        ActionSpec{PreviousCore, Menu::Core, "Previous c&ore", "Turn to the core before.", "", "PgUp", Needs::Core,
                   not_in_bar, same_group},
        ActionSpec{NextScan, Menu::Core, "Ne&xt scan", "Turn to the next scan on the bench.", "", "Ctrl+PgDown",
                   Needs::Scan, not_in_bar, same_group},
        ActionSpec{PreviousScan, Menu::Core, "Pre&vious scan", "Turn to the scan before.", "", "Ctrl+PgUp", Needs::Scan,
                   not_in_bar, same_group},
        ActionSpec{Cancel, Menu::Core, "Stop &work", "Stop what runs beside the window; nothing of it is kept.", "",
                   "Ctrl+.", Needs::Work, not_in_bar, new_group},

        ActionSpec{MarkDone, Menu::Review, "Reading is &done",
                   "Say that you are done with this reading: then it waits for a second person.", "", "W", Needs::Core,
                   not_in_bar, same_group},
        ActionSpec{AcceptReading, Menu::Review, "&Accept this reading",
                   "Let this reading stand for its core, where it has several.", "", "Shift+W", Needs::Core, not_in_bar,
                   same_group},
        ActionSpec{NextToDo, Menu::Review, "Next core to &measure",
                   "Go to the next core of the project that waits for its analyst, returned ones first.", "", "Ctrl+N",
                   Needs::Project, not_in_bar, same_group},
        ActionSpec{ShowHistory, Menu::Review, "&History…",
                   "Who did what to this core, and the reading as it was at any time.", "", "Ctrl+H", Needs::Recorded,
                   not_in_bar, same_group},
        ActionSpec{CompareReadings, Menu::Review, "Compare readin&gs…",
                   "How far two readings of this core agree, and each boundary that only one of them has.", "",
                   "Ctrl+M", Needs::Recorded, not_in_bar, same_group},
        ActionSpec{ShowBench, Menu::Review, "To the &bench", "Measure cores.", "", "Ctrl+1", Needs::Project, not_in_bar,
                   new_group},
        ActionSpec{ShowReview, Menu::Review, "To the &review", "See what waits for a second person, the worst first.",
                   "", "Ctrl+2", Needs::Project, not_in_bar, same_group},
        ActionSpec{ShowSite, Menu::Review, "To the &site",
                   "See how the series of the site go with each other, and where a ring is missing or counted twice.",
                   "", "Ctrl+3", Needs::Project, not_in_bar, same_group},
        ActionSpec{PassQueued, Menu::Review, "&Pass and go on", "It was settled rightly; go to the next.", "", "O",
                   Needs::Queue, not_in_bar, new_group},
        ActionSpec{ReturnQueued, Menu::Review, "&Return and go on",
                   "Send it back to its analyst with the comment; go to the next.", "", "J", Needs::Queue, not_in_bar,
                   same_group},
        ActionSpec{CommentQueued, Menu::Review, "&Comment", "Write a comment that goes with the verdict.", "", "I",
                   Needs::Queue, not_in_bar, same_group},
        ActionSpec{OpenQueued, Menu::Review, "&Open on the bench", "Go to this place on the bench.", "", "G",
                   Needs::Place, not_in_bar, same_group},
        ActionSpec{OtherQueue, Menu::Review, "Analysts' &list, or back",
                   "Show what waits for the analysts instead, or again what waits for the second person.", "", "Q",
                   Needs::Project, not_in_bar, same_group},

        ActionSpec{ZoomIn, Menu::View, "Zoom &in", "Come closer.", "zoom-in", "+ =", Needs::Picture, in_bar,
                   same_group},
        ActionSpec{ZoomOut, Menu::View, "Zoom &out", "Step back.", "zoom-out", "-", Needs::Picture, in_bar, same_group},
        ActionSpec{ShowAll, Menu::View, "&Whole scan", "Show the whole scan, or all years.", "whole", "0",
                   Needs::Picture, in_bar, same_group},
        ActionSpec{ShowPixels, Menu::View, "&Full size", "Show each pixel of the scan as one on the screen.", "", "1",
                   Needs::View, not_in_bar, same_group},
        ActionSpec{GoToBark, Menu::View, "To the &bark", "Go to the bark end of the path.", "", "Home", Needs::Core,
                   not_in_bar, new_group},
        ActionSpec{GoToPith, Menu::View, "To the &pith", "Go to the inner end of the path.", "", "End", Needs::Core,
                   not_in_bar, same_group},
        ActionSpec{TurnLeft, Menu::View, "Turn &left", "Turn the view a quarter to the left.", "", "Ctrl+L",
                   Needs::View, not_in_bar, new_group},
        ActionSpec{TurnRight, Menu::View, "Turn &right", "Turn the view a quarter to the right.", "", "Ctrl+R",
                   Needs::View, not_in_bar, same_group},
        ActionSpec{FoldPanel, Menu::View, "F&old side panel", "Fold the side panel away, or out again.", "panel", "F9",
                   Needs::Scan, in_bar, new_group},
        ActionSpec{ColoursSystem, Menu::Colours, "As the &system", "Light or dark, as the desktop says.", "", "",
                   Needs::Nothing, not_in_bar, same_group},
        ActionSpec{ColoursLight, Menu::Colours, "&Light", "Always light.", "", "", Needs::Nothing, not_in_bar,
                   same_group},
        ActionSpec{ColoursDark, Menu::Colours, "&Dark", "Always dark.", "", "", Needs::Nothing, not_in_bar, same_group},

        ActionSpec{OpenDemo, Menu::Help, "Open the &demo site", "Open sixteen rendered cores of an invented site.", "",
                   "", Needs::Nothing, not_in_bar, same_group},
        ActionSpec{Keys, Menu::Help, "&Keys and mouse", "Show every key and what the mouse does.", "", "F1",
                   Needs::Nothing, not_in_bar, same_group},
    };
    return table;
}

bool enabled(Needs needs, const BenchState& state) {
    switch (needs) {
    case Needs::Nothing:
        return true;
    case Needs::Scan:
        return state.scan;
    case Needs::Scale:
        return state.scale;
    case Needs::Core:
        return state.core;
    case Needs::Boundary:
        return state.boundary;
    case Needs::Finding:
        return state.finding;
    case Needs::Undo:
        return state.undo;
    case Needs::Redo:
        return state.redo;
    case Needs::Work:
        return state.work;
    case Needs::View:
        return state.view;
    case Needs::Project:
        return state.project;
    case Needs::Recorded:
        return state.recorded;
    case Needs::Queue:
        return state.queue;
    case Needs::Picture:
        return state.view || state.picture;
    case Needs::Place:
        return state.queue || state.place;
    }
    return true;
}

QString text_of(const ActionSpec& spec) {
    return QCoreApplication::translate("Actions", spec.text);
}

QString help_of(const ActionSpec& spec) {
    return QCoreApplication::translate("Actions", spec.help);
}

QString title_of(Menu menu) {
    const auto tr = [](const char* text) { return QCoreApplication::translate("Menus", text); };
    switch (menu) {
    case Menu::File:
        return tr("&File");
    case Menu::Edit:
        return tr("&Edit");
    case Menu::Core:
        return tr("&Core");
    case Menu::Review:
        return tr("&Review");
    case Menu::View:
        return tr("&View");
    case Menu::Colours:
        return tr("&Colours");
    case Menu::Help:
        return tr("&Help");
    }
    return {};
}

} // namespace pithward::bench
