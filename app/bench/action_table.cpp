#include "app/bench/action_table.h"

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

        ActionSpec{FindCores, Menu::Core, "&Find cores", "Look for cores again; readings of this scan are replaced.",
                   "find", "Ctrl+F", Needs::Scale, not_in_bar, same_group},
        ActionSpec{DrawPath, Menu::Core, "&Draw path", "Click a path from bark to pith and measure along it.", "path",
                   "P", Needs::Scale, in_bar, same_group},
        ActionSpec{SwapEnds, Menu::Core, "S&wap bark and pith", "Read the core again from its other end.", "swap", "R",
                   Needs::Core, in_bar, same_group},
        ActionSpec{SetYear, Menu::Core, "Set &year…", "Type the year of the outermost ring.", "", "Y", Needs::Core,
                   not_in_bar, same_group},
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

        ActionSpec{ZoomIn, Menu::View, "Zoom &in", "Come closer.", "zoom-in", "+ =", Needs::Scan, in_bar, same_group},
        ActionSpec{ZoomOut, Menu::View, "Zoom &out", "Step back.", "zoom-out", "-", Needs::Scan, in_bar, same_group},
        ActionSpec{ShowAll, Menu::View, "&Whole scan", "Show the whole scan.", "whole", "0", Needs::Scan, in_bar,
                   same_group},
        ActionSpec{ShowPixels, Menu::View, "&Full size", "Show each pixel of the scan as one on the screen.", "", "1",
                   Needs::Scan, not_in_bar, same_group},
        ActionSpec{GoToBark, Menu::View, "To the &bark", "Go to the bark end of the path.", "", "Home", Needs::Core,
                   not_in_bar, new_group},
        ActionSpec{GoToPith, Menu::View, "To the &pith", "Go to the inner end of the path.", "", "End", Needs::Core,
                   not_in_bar, same_group},
        ActionSpec{TurnLeft, Menu::View, "Turn &left", "Turn the view a quarter to the left.", "", "Ctrl+L",
                   Needs::Scan, not_in_bar, new_group},
        ActionSpec{TurnRight, Menu::View, "Turn &right", "Turn the view a quarter to the right.", "", "Ctrl+R",
                   Needs::Scan, not_in_bar, same_group},
        ActionSpec{FoldPanel, Menu::View, "F&old side panel", "Fold the side panel away, or out again.", "panel", "F9",
                   Needs::Scan, in_bar, new_group},
        ActionSpec{ColoursSystem, Menu::Colours, "As the &system", "Light or dark, as the desktop says.", "", "",
                   Needs::Nothing, not_in_bar, same_group},
        ActionSpec{ColoursLight, Menu::Colours, "&Light", "Always light.", "", "", Needs::Nothing, not_in_bar,
                   same_group},
        ActionSpec{ColoursDark, Menu::Colours, "&Dark", "Always dark.", "", "", Needs::Nothing, not_in_bar, same_group},

        ActionSpec{Keys, Menu::Help, "&Keys", "Show every key.", "", "F1", Needs::Nothing, not_in_bar, same_group},
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
    case Needs::Finding:
        return state.finding;
    case Needs::Work:
        return state.work;
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
    case Menu::Core:
        return tr("&Core");
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
