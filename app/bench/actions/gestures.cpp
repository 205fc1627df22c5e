#include "app/bench/actions/gestures.h"

#include <QtGlobal>
#include <array>

namespace pithward::bench {

std::span<const Gesture> gestures() {
    static constexpr std::array table{
        Gesture{
            QT_TRANSLATE_NOOP("Gestures", "Wheel"),
            QT_TRANSLATE_NOOP("Gestures", "Zoom at the cursor; with Shift move along, with Ctrl turn by a degree.")},
        Gesture{QT_TRANSLATE_NOOP("Gestures", "Drag, arrows"),
                QT_TRANSLATE_NOOP("Gestures", "Move the scan; arrows with Shift in large steps.")},
        Gesture{QT_TRANSLATE_NOOP("Gestures", "Click a boundary"),
                QT_TRANSLATE_NOOP("Gestures", "Take it in hand. A click on another core turns to that core.")},
        Gesture{QT_TRANSLATE_NOOP("Gestures", "Double click the wood"),
                QT_TRANSLATE_NOOP("Gestures", "Add the boundary that the wood shows there; with Shift just there.")},
        Gesture{QT_TRANSLATE_NOOP("Gestures", "Drag a boundary"),
                QT_TRANSLATE_NOOP("Gestures", "Near the path: move it. At the end of its line: turn it.")},
        Gesture{QT_TRANSLATE_NOOP("Gestures", "Drag a bend or an end of the path"),
                QT_TRANSLATE_NOOP("Gestures", "Move it. Further out the path gets longer, and what is new is read.")},
        Gesture{QT_TRANSLATE_NOOP("Gestures", "Ctrl and drag the path"),
                QT_TRANSLATE_NOOP("Gestures", "Bend it there.")},
        Gesture{QT_TRANSLATE_NOOP("Gestures", "Drag the pith"),
                QT_TRANSLATE_NOOP("Gestures", "Put it elsewhere; at the small squares: bend the innermost ring.")},
        Gesture{QT_TRANSLATE_NOOP("Gestures", "Double click a break"),
                QT_TRANSLATE_NOOP("Gestures", "Say what it is and how many rings are gone, or remove it.")},
        Gesture{QT_TRANSLATE_NOOP("Gestures", "Right click"),
                QT_TRANSLATE_NOOP("Gestures", "All that can be done with what is there.")},
        Gesture{QT_TRANSLATE_NOOP("Gestures", "H, held"),
                QT_TRANSLATE_NOOP("Gestures", "Hide every mark while it is held.")},
        Gesture{QT_TRANSLATE_NOOP("Gestures", "Enter, Backspace, Escape"),
                QT_TRANSLATE_NOOP("Gestures", "With a tool in hand: finish, take the last point back, give up.")},
    };
    return table;
}

} // namespace pithward::bench
