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

struct Menus {
    Q_DECLARE_TR_FUNCTIONS(Menus)
};

} // namespace

std::span<const ActionSpec> action_table() {
    using enum ActionId;
    static constexpr std::array table{
        ActionSpec{Open, Menu::File, QT_TRANSLATE_NOOP("Actions", "&Open scan…"),
                   QT_TRANSLATE_NOOP("Actions", "Open scans or add them to the bench."), "open", "Ctrl+O",
                   Needs::Nothing, in_bar, same_group},
        ActionSpec{OpenProject, Menu::File, QT_TRANSLATE_NOOP("Actions", "Open &project…"),
                   QT_TRANSLATE_NOOP("Actions", "Open a project: its cores, readings and their history."), "",
                   "Ctrl+Shift+O", Needs::Nothing, not_in_bar, same_group},
        ActionSpec{NewProject, Menu::File, QT_TRANSLATE_NOOP("Actions", "&New project…"),
                   QT_TRANSLATE_NOOP("Actions", "Make a project from a field sheet and a folder of scans."), "",
                   "Ctrl+Shift+N", Needs::Nothing, not_in_bar, same_group},
        ActionSpec{SettleScans, Menu::File, QT_TRANSLATE_NOOP("Actions", "&Scans and cores…"),
                   QT_TRANSLATE_NOOP("Actions", "Say which scan belongs to which core, where names and codes don't."),
                   "", "Ctrl+Shift+S", Needs::Project, not_in_bar, same_group},
        ActionSpec{SayWho, Menu::File, QT_TRANSLATE_NOOP("Actions", "&Who works here…"),
                   QT_TRANSLATE_NOOP("Actions", "Say who works at this window: each edit of a project tells it."), "",
                   "Ctrl+U", Needs::Nothing, not_in_bar, same_group},
        ActionSpec{ExportCsv, Menu::File, QT_TRANSLATE_NOOP("Actions", "Export &CSV…"),
                   QT_TRANSLATE_NOOP("Actions", "Write the ring widths as a table, years down."), "", "Ctrl+E",
                   Needs::Core, not_in_bar, new_group},
        ActionSpec{ExportDecadal, Menu::File, QT_TRANSLATE_NOOP("Actions", "Export &decadal file…"),
                   QT_TRANSLATE_NOOP("Actions", "Write the ring widths as a decadal file, as dating programs read it."),
                   "", "Ctrl+D", Needs::Core, not_in_bar, same_group},
        ActionSpec{ExportJson, Menu::File, QT_TRANSLATE_NOOP("Actions", "Export &JSON…"),
                   QT_TRANSLATE_NOOP("Actions", "Write everything that was read, with its uncertainty."), "", "Ctrl+J",
                   Needs::Core, not_in_bar, same_group},
        ActionSpec{ExportPicture, Menu::File, QT_TRANSLATE_NOOP("Actions", "Export &picture…"),
                   QT_TRANSLATE_NOOP("Actions", "Write a picture of the scan with its boundaries."), "", "Ctrl+P",
                   Needs::Core, not_in_bar, same_group},
        ActionSpec{
            WriteReport, Menu::File, QT_TRANSLATE_NOOP("Actions", "Write &report…"),
            QT_TRANSLATE_NOOP("Actions",
                              "Tell of the whole project as a PDF or a web page: site, method, cores, dating, review."),
            "", "Ctrl+Shift+R", Needs::Project, not_in_bar, same_group},
        ActionSpec{WritePackage, Menu::File, QT_TRANSLATE_NOOP("Actions", "Archive pac&kage…"),
                   QT_TRANSLATE_NOOP("Actions",
                                     "Put series, metadata, report and checksums in one zip, ready for the archive."),
                   "", "Ctrl+Shift+K", Needs::Project, not_in_bar, same_group},
        ActionSpec{Quit, Menu::File, QT_TRANSLATE_NOOP("Actions", "&Quit"),
                   QT_TRANSLATE_NOOP("Actions", "Close the window."), "", "Ctrl+Q", Needs::Nothing, not_in_bar,
                   new_group},

        ActionSpec{Undo, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "&Undo"),
                   QT_TRANSLATE_NOOP("Actions", "Take the last change back."), "undo", "Ctrl+Z", Needs::Undo, in_bar,
                   same_group},
        ActionSpec{Redo, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "&Redo"),
                   QT_TRANSLATE_NOOP("Actions", "Do again what was taken back."), "redo", "Ctrl+Shift+Z Ctrl+Y",
                   Needs::Redo, in_bar, same_group},
        ActionSpec{Confirm, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "&Confirm and go on"),
                   QT_TRANSLATE_NOOP("Actions", "Confirm the boundary in hand and take up the next one."), "confirm",
                   "C", Needs::Core, in_bar, new_group},
        ActionSpec{
            ConfirmSure, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Confirm all &sure ones"),
            QT_TRANSLATE_NOOP("Actions", "Confirm every boundary with a whole line; it is recorded as done in bulk."),
            "confirm-all", "Shift+C", Needs::Core, in_bar, same_group},
        ActionSpec{NextBoundary, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Ne&xt boundary"),
                   QT_TRANSLATE_NOOP("Actions", "Take up the next boundary toward the pith."), "", ".", Needs::Core,
                   not_in_bar, same_group},
        ActionSpec{PreviousBoundary, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Pre&vious boundary"),
                   QT_TRANSLATE_NOOP("Actions", "Take up the next boundary toward the bark."), "", ",", Needs::Core,
                   not_in_bar, same_group},
        ActionSpec{AddBoundary, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "&Add boundary here"),
                   QT_TRANSLATE_NOOP("Actions", "Add the boundary that the wood shows near the cursor."), "", "A",
                   Needs::Core, not_in_bar, new_group},
        ActionSpec{AddFreely, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Add boundary &freely"),
                   QT_TRANSLATE_NOOP("Actions", "Add a boundary at the cursor, whatever the wood shows."), "",
                   "Shift+A", Needs::Core, not_in_bar, same_group},
        ActionSpec{DeleteBoundary, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "&Delete boundary"),
                   QT_TRANSLATE_NOOP("Actions", "Delete the boundary in hand."), "", "Del Backspace", Needs::Boundary,
                   not_in_bar, same_group},
        ActionSpec{TurnBoundaryLeft, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Turn &left"),
                   QT_TRANSLATE_NOOP("Actions", "Turn the boundary in hand one degree to the left."), "", "[",
                   Needs::Boundary, not_in_bar, same_group},
        ActionSpec{TurnBoundaryRight, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Turn r&ight"),
                   QT_TRANSLATE_NOOP("Actions", "Turn the boundary in hand one degree to the right."), "", "]",
                   Needs::Boundary, not_in_bar, same_group},
        ActionSpec{FalseRing, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Fals&e ring"),
                   QT_TRANSLATE_NOOP("Actions", "The boundary in hand is no year's end: turn it down."), "", "F",
                   Needs::Boundary, not_in_bar, new_group},
        ActionSpec{TakeCandidate, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "&Take what was turned down"),
                   QT_TRANSLATE_NOOP("Actions", "Take the candidate under the cursor as a boundary."), "", "Shift+F",
                   Needs::Core, not_in_bar, same_group},
        ActionSpec{
            MarkAbsent, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Locally a&bsent ring"),
            QT_TRANSLATE_NOOP("Actions",
                              "Mark a year of width 0 at the boundary in hand, just outside the ring that it closes."),
            "", "L", Needs::Boundary, not_in_bar, same_group},
        ActionSpec{NotAbsent, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "N&o absent ring"),
                   QT_TRANSLATE_NOOP("Actions", "Take away the absent ring at the boundary in hand."), "", "Shift+L",
                   Needs::Boundary, not_in_bar, same_group},
        ActionSpec{MarkCrack, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Crac&k…"),
                   QT_TRANSLATE_NOOP("Actions", "Click the two edges of a crack: its breadth is no wood."), "", "B",
                   Needs::Core, not_in_bar, same_group},
        ActionSpec{MarkLostWood, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Lost &wood…"),
                   QT_TRANSLATE_NOOP("Actions",
                                     "Click the two edges of a stretch where wood is lost: its rings get no width."),
                   "", "Shift+B", Needs::Core, not_in_bar, same_group},
        ActionSpec{EditBreak, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Change brea&k…"),
                   QT_TRANSLATE_NOOP(
                       "Actions", "Say what the break under the cursor is and how many rings are gone, or remove it."),
                   "", "X", Needs::Core, not_in_bar, same_group},
        ActionSpec{Note, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "&Note…"),
                   QT_TRANSLATE_NOOP("Actions", "Write a note on the boundary in hand."), "", "M", Needs::Boundary,
                   not_in_bar, same_group},
        ActionSpec{TakeProposal, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Take the &proposal"),
                   QT_TRANSLATE_NOOP("Actions", "Do what the finding proposes; on the bench go to the next."), "take",
                   "T", Needs::Finding, in_bar, new_group},
        ActionSpec{KeepAsItIs, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Keep as it is"),
                   QT_TRANSLATE_NOOP("Actions", "Leave it as it is, looked at; on the bench go to the next."), "keep",
                   "K", Needs::Finding, in_bar, same_group},
        ActionSpec{CannotBeTold, Menu::Edit, QT_TRANSLATE_NOOP("Actions", "Can't be told"),
                   QT_TRANSLATE_NOOP("Actions", "Nobody can tell on this core; on the bench go to the next."), "", "U",
                   Needs::Finding, not_in_bar, same_group},

        ActionSpec{FindCores, Menu::Core, QT_TRANSLATE_NOOP("Actions", "&Find cores"),
                   QT_TRANSLATE_NOOP("Actions", "Look for cores again; readings of this scan are replaced."), "find",
                   "Ctrl+F", Needs::Scale, not_in_bar, same_group},
        ActionSpec{MeasureAll, Menu::Core, QT_TRANSLATE_NOOP("Actions", "&Measure all cores"),
                   QT_TRANSLATE_NOOP("Actions", "Measure every core of the project that has no reading yet."), "",
                   "Ctrl+Shift+M", Needs::Project, not_in_bar, same_group},
        ActionSpec{DrawPath, Menu::Core, QT_TRANSLATE_NOOP("Actions", "&Draw path"),
                   QT_TRANSLATE_NOOP("Actions", "Click a path from bark to pith and measure along it."), "path", "P",
                   Needs::Scale, in_bar, same_group},
        ActionSpec{SwapEnds, Menu::Core, QT_TRANSLATE_NOOP("Actions", "S&wap bark and pith"),
                   QT_TRANSLATE_NOOP("Actions", "Read the core again from its other end."), "swap", "R", Needs::Core,
                   in_bar, same_group},
        ActionSpec{
            ExtendPath, Menu::Core, QT_TRANSLATE_NOOP("Actions", "&Extend path to here"),
            QT_TRANSLATE_NOOP("Actions", "Let the path go on to the cursor from its nearer end, and read what is new."),
            "", "E", Needs::Core, not_in_bar, same_group},
        ActionSpec{BendPath, Menu::Core, QT_TRANSLATE_NOOP("Actions", "&Bend path here"),
                   QT_TRANSLATE_NOOP("Actions",
                                     "Put a bend into the path at the cursor, to be dragged; Ctrl and a drag do both."),
                   "", "V", Needs::Core, not_in_bar, same_group},
        ActionSpec{StraightenPath, Menu::Core, QT_TRANSLATE_NOOP("Actions", "Take bend &away"),
                   QT_TRANSLATE_NOOP("Actions", "Take away the bend under the cursor."), "", "Shift+V", Needs::Core,
                   not_in_bar, same_group},
        ActionSpec{
            StepAside, Menu::Core, QT_TRANSLATE_NOOP("Actions", "Step &aside along boundary"),
            QT_TRANSLATE_NOOP(
                "Actions", "Let the path step along the boundary in hand to the cursor's side and go on from there."),
            "", "S", Needs::Boundary, not_in_bar, same_group},
        ActionSpec{GoOnElsewhere, Menu::Core, QT_TRANSLATE_NOOP("Actions", "&Go on on another scan…"),
                   QT_TRANSLATE_NOOP(
                       "Actions",
                       "Let the path go on on another scan of this core: from the boundary in hand, or over a gap."),
                   "", "Shift+S", Needs::Core, not_in_bar, same_group},
        ActionSpec{
            PlacePith, Menu::Core, QT_TRANSLATE_NOOP("Actions", "P&ith here"),
            QT_TRANSLATE_NOOP(
                "Actions",
                "Put the pith at the cursor; its mark and the arc beside the innermost ring can be dragged too."),
            "", "Z", Needs::Core, not_in_bar, same_group},
        ActionSpec{JudgePith, Menu::Core, QT_TRANSLATE_NOOP("Actions", "Pith by the rin&gs"),
                   QT_TRANSLATE_NOOP("Actions",
                                     "Judge the pith by the curve of the rings again, where it was placed by hand."),
                   "", "Shift+Z", Needs::Core, not_in_bar, same_group},
        ActionSpec{SetYear, Menu::Core, QT_TRANSLATE_NOOP("Actions", "Set &year…"),
                   QT_TRANSLATE_NOOP("Actions", "Type the year of the outermost ring."), "", "Y", Needs::Core,
                   not_in_bar, same_group},
        ActionSpec{ReadRuler, Menu::Core, QT_TRANSLATE_NOOP("Actions", "Scale by a &ruler…"),
                   QT_TRANSLATE_NOOP("Actions",
                                     "Click a line along the marks of a ruler on the scan, to read the scale from it."),
                   "", "D", Needs::Scan, not_in_bar, same_group},
        ActionSpec{ShowScale, Menu::Core, QT_TRANSLATE_NOOP("Actions", "Sca&le…"),
                   QT_TRANSLATE_NOOP("Actions", "Who says what of the scan's scale, and which one is used."), "",
                   "Shift+D", Needs::Scan, not_in_bar, same_group},
        ActionSpec{NextFinding, Menu::Core, QT_TRANSLATE_NOOP("Actions", "&Next finding"),
                   QT_TRANSLATE_NOOP("Actions", "Go to the next place that wants a look."), "next", "N", Needs::Finding,
                   in_bar, new_group},
        ActionSpec{PreviousFinding, Menu::Core, QT_TRANSLATE_NOOP("Actions", "&Previous finding"),
                   QT_TRANSLATE_NOOP("Actions", "Go to the place before."), "previous", "Shift+N", Needs::Finding,
                   in_bar, same_group},
        ActionSpec{NextCore, Menu::Core, QT_TRANSLATE_NOOP("Actions", "Next co&re"),
                   QT_TRANSLATE_NOOP("Actions", "Turn to the next core of this scan."), "", "PgDown", Needs::Core,
                   not_in_bar, new_group},
        ActionSpec{PreviousCore, Menu::Core, QT_TRANSLATE_NOOP("Actions", "Previous c&ore"),
                   QT_TRANSLATE_NOOP("Actions", "Turn to the core before."), "", "PgUp", Needs::Core, not_in_bar,
                   same_group},
        ActionSpec{NextScan, Menu::Core, QT_TRANSLATE_NOOP("Actions", "Ne&xt scan"),
                   QT_TRANSLATE_NOOP("Actions", "Turn to the next scan on the bench."), "", "Ctrl+PgDown", Needs::Scan,
                   not_in_bar, same_group},
        ActionSpec{PreviousScan, Menu::Core, QT_TRANSLATE_NOOP("Actions", "Pre&vious scan"),
                   QT_TRANSLATE_NOOP("Actions", "Turn to the scan before."), "", "Ctrl+PgUp", Needs::Scan, not_in_bar,
                   same_group},
        ActionSpec{Cancel, Menu::Core, QT_TRANSLATE_NOOP("Actions", "Stop &work"),
                   QT_TRANSLATE_NOOP("Actions", "Stop what runs beside the window; nothing of it is kept."), "",
                   "Ctrl+.", Needs::Work, not_in_bar, new_group},

        ActionSpec{
            MarkDone, Menu::Review, QT_TRANSLATE_NOOP("Actions", "Reading is &done"),
            QT_TRANSLATE_NOOP("Actions", "Say that you are done with this reading: then it waits for a second person."),
            "", "W", Needs::Core, not_in_bar, same_group},
        ActionSpec{AcceptReading, Menu::Review, QT_TRANSLATE_NOOP("Actions", "&Accept this reading"),
                   QT_TRANSLATE_NOOP("Actions", "Let this reading stand for its core, where it has several."), "",
                   "Shift+W", Needs::Core, not_in_bar, same_group},
        ActionSpec{
            NextToDo, Menu::Review, QT_TRANSLATE_NOOP("Actions", "Next core to &measure"),
            QT_TRANSLATE_NOOP("Actions",
                              "Go to the next core of the project that waits for its analyst, returned ones first."),
            "", "Ctrl+N", Needs::Project, not_in_bar, same_group},
        ActionSpec{ShowHistory, Menu::Review, QT_TRANSLATE_NOOP("Actions", "&History…"),
                   QT_TRANSLATE_NOOP("Actions", "Who did what to this core, and the reading as it was at any time."),
                   "", "Ctrl+H", Needs::Recorded, not_in_bar, same_group},
        ActionSpec{
            CompareReadings, Menu::Review, QT_TRANSLATE_NOOP("Actions", "Compare readin&gs…"),
            QT_TRANSLATE_NOOP("Actions",
                              "How far two readings of this core agree, and each boundary that only one of them has."),
            "", "Ctrl+M", Needs::Recorded, not_in_bar, same_group},
        ActionSpec{ShowBench, Menu::Review, QT_TRANSLATE_NOOP("Actions", "To the &bench"),
                   QT_TRANSLATE_NOOP("Actions", "Measure cores."), "", "Ctrl+1", Needs::Project, not_in_bar, new_group},
        ActionSpec{ShowReview, Menu::Review, QT_TRANSLATE_NOOP("Actions", "To the &review"),
                   QT_TRANSLATE_NOOP("Actions", "See what waits for a second person, the worst first."), "", "Ctrl+2",
                   Needs::Project, not_in_bar, same_group},
        ActionSpec{
            ShowSite, Menu::Review, QT_TRANSLATE_NOOP("Actions", "To the &site"),
            QT_TRANSLATE_NOOP(
                "Actions",
                "See how the series of the site go with each other, and where a ring is missing or counted twice."),
            "", "Ctrl+3", Needs::Project, not_in_bar, same_group},
        ActionSpec{ShowProgress, Menu::Review, QT_TRANSLATE_NOOP("Actions", "&To the progress"),
                   QT_TRANSLATE_NOOP("Actions", "See how far each core is, what stands against it and what is next."),
                   "", "Ctrl+4", Needs::Project, not_in_bar, same_group},
        ActionSpec{PassQueued, Menu::Review, QT_TRANSLATE_NOOP("Actions", "&Pass and go on"),
                   QT_TRANSLATE_NOOP("Actions", "It was settled rightly; go to the next."), "", "O", Needs::Queue,
                   not_in_bar, new_group},
        ActionSpec{ReturnQueued, Menu::Review, QT_TRANSLATE_NOOP("Actions", "&Return and go on"),
                   QT_TRANSLATE_NOOP("Actions", "Send it back to its analyst with the comment; go to the next."), "",
                   "J", Needs::Queue, not_in_bar, same_group},
        ActionSpec{CommentQueued, Menu::Review, QT_TRANSLATE_NOOP("Actions", "&Comment"),
                   QT_TRANSLATE_NOOP("Actions", "Write a comment that goes with the verdict."), "", "I", Needs::Queue,
                   not_in_bar, same_group},
        ActionSpec{OpenQueued, Menu::Review, QT_TRANSLATE_NOOP("Actions", "&Open on the bench"),
                   QT_TRANSLATE_NOOP("Actions", "Go to this place on the bench."), "", "G", Needs::Place, not_in_bar,
                   same_group},
        ActionSpec{
            OtherQueue, Menu::Review, QT_TRANSLATE_NOOP("Actions", "Analysts' &list, or back"),
            QT_TRANSLATE_NOOP("Actions",
                              "Show what waits for the analysts instead, or again what waits for the second person."),
            "", "Q", Needs::Project, not_in_bar, same_group},

        ActionSpec{ZoomIn, Menu::View, QT_TRANSLATE_NOOP("Actions", "Zoom &in"),
                   QT_TRANSLATE_NOOP("Actions", "Come closer."), "zoom-in", "+ =", Needs::Picture, in_bar, same_group},
        ActionSpec{ZoomOut, Menu::View, QT_TRANSLATE_NOOP("Actions", "Zoom &out"),
                   QT_TRANSLATE_NOOP("Actions", "Step back."), "zoom-out", "-", Needs::Picture, in_bar, same_group},
        ActionSpec{ShowAll, Menu::View, QT_TRANSLATE_NOOP("Actions", "&Whole scan"),
                   QT_TRANSLATE_NOOP("Actions", "Show the whole scan, or all years."), "whole", "0", Needs::Picture,
                   in_bar, same_group},
        ActionSpec{ShowPixels, Menu::View, QT_TRANSLATE_NOOP("Actions", "&Full size"),
                   QT_TRANSLATE_NOOP("Actions", "Show each pixel of the scan as one on the screen."), "", "1",
                   Needs::View, not_in_bar, same_group},
        ActionSpec{GoToBark, Menu::View, QT_TRANSLATE_NOOP("Actions", "To the &bark"),
                   QT_TRANSLATE_NOOP("Actions", "Go to the bark end of the path."), "", "Home", Needs::Core, not_in_bar,
                   new_group},
        ActionSpec{GoToPith, Menu::View, QT_TRANSLATE_NOOP("Actions", "To the &pith"),
                   QT_TRANSLATE_NOOP("Actions", "Go to the inner end of the path."), "", "End", Needs::Core, not_in_bar,
                   same_group},
        ActionSpec{TurnLeft, Menu::View, QT_TRANSLATE_NOOP("Actions", "Turn &left"),
                   QT_TRANSLATE_NOOP("Actions", "Turn the view a quarter to the left."), "", "Ctrl+L", Needs::View,
                   not_in_bar, new_group},
        ActionSpec{TurnRight, Menu::View, QT_TRANSLATE_NOOP("Actions", "Turn &right"),
                   QT_TRANSLATE_NOOP("Actions", "Turn the view a quarter to the right."), "", "Ctrl+R", Needs::View,
                   not_in_bar, same_group},
        ActionSpec{
            LevelCore, Menu::View, QT_TRANSLATE_NOOP("Actions", "&Level the core"),
            QT_TRANSLATE_NOOP("Actions", "Turn the view so that the present core lies level, its bark to the left."),
            "", "Ctrl+T", Needs::Core, not_in_bar, same_group},
        ActionSpec{
            ShowDetails, Menu::View, QT_TRANSLATE_NOOP("Actions", "Field &data"),
            QT_TRANSLATE_NOOP("Actions",
                              "What the field sheet says of this core, to be read and changed; again folds it away."),
            "", "F8", Needs::Scan, not_in_bar, new_group},
        ActionSpec{FoldPanel, Menu::View, QT_TRANSLATE_NOOP("Actions", "F&old side panel"),
                   QT_TRANSLATE_NOOP("Actions", "Fold the side panel away, or out again."), "panel", "F9", Needs::Scan,
                   in_bar, same_group},
        ActionSpec{ColoursSystem, Menu::Colours, QT_TRANSLATE_NOOP("Actions", "As the &system"),
                   QT_TRANSLATE_NOOP("Actions", "Light or dark, as the desktop says."), "", "", Needs::Nothing,
                   not_in_bar, same_group},
        ActionSpec{ColoursLight, Menu::Colours, QT_TRANSLATE_NOOP("Actions", "&Light"),
                   QT_TRANSLATE_NOOP("Actions", "Always light."), "", "", Needs::Nothing, not_in_bar, same_group},
        ActionSpec{ColoursDark, Menu::Colours, QT_TRANSLATE_NOOP("Actions", "&Dark"),
                   QT_TRANSLATE_NOOP("Actions", "Always dark."), "", "", Needs::Nothing, not_in_bar, same_group},

        ActionSpec{OpenDemo, Menu::Help, QT_TRANSLATE_NOOP("Actions", "Open the &demo site"),
                   QT_TRANSLATE_NOOP("Actions", "Open sixteen rendered cores of an invented site."), "", "",
                   Needs::Nothing, not_in_bar, same_group},
        ActionSpec{ShowHandbook, Menu::Help, QT_TRANSLATE_NOOP("Actions", "&Handbook"),
                   QT_TRANSLATE_NOOP("Actions", "A first hour, the views, each finding, and the limits."), "",
                   "Shift+F1", Needs::Nothing, not_in_bar, same_group},
        ActionSpec{Keys, Menu::Help, QT_TRANSLATE_NOOP("Actions", "&Keys and mouse"),
                   QT_TRANSLATE_NOOP("Actions", "Show every key and what the mouse does."), "", "F1", Needs::Nothing,
                   not_in_bar, same_group},
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
    switch (menu) {
    case Menu::File:
        return Menus::tr("&File");
    case Menu::Edit:
        return Menus::tr("&Edit");
    case Menu::Core:
        return Menus::tr("&Core");
    case Menu::Review:
        return Menus::tr("&Review");
    case Menu::View:
        return Menus::tr("&View");
    case Menu::Colours:
        return Menus::tr("&Colours");
    case Menu::Help:
        return Menus::tr("&Help");
    }
    return {};
}

} // namespace pithward::bench
